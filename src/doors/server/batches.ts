// Why: files handed in together for one walk: streamed to the media store as they come, understood together when all are there.
import type { MediaStore } from '../../keep/log.ts';
import { decodeText } from '../files/decode-text.ts';
import { idFrom } from '../files/make-entries.ts';
import { sizeOf } from '../files/read-folder.ts';
import { FileRefusal, textLimit, type WalkFile } from '../files/walk-file.ts';
import type { PutFileReply } from '../wire/api.ts';
import { Refusal } from './refusal.ts';

const mostFiles = 5000;
const mostBatches = 500;

export interface Batch {
  /** The instant that the batch's id carries, or at which its first file came. */
  readonly at: string;
  readonly files: Map<string, PutFileReply>;
}

/** A batch's id is a UUID version 7 as a rule; the instant in it makes sending again after a restart harmless. */
const instantIn = (id: string): string | undefined =>
  /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/.test(id)
    ? new Date(Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16)).toISOString()
    : undefined;

/** The name under which a file of a batch is kept. Throws Refusal outside-folder for one that leads out of it. */
export function fileName(raw: string): string {
  let name: string;
  try {
    name = decodeURIComponent(raw);
  } catch {
    throw new Refusal(400, 'outside-folder', { where: raw.slice(0, 200) });
  }
  const steps = name.split(/[\\/]/);
  const isPlain =
    steps.every((s) => s !== '' && s !== '.' && s !== '..') &&
    !/^[a-z]:/i.test(name) &&
    !/\p{Cc}/u.test(name);
  if (!isPlain || name.length > 300 || steps.length > 4)
    throw new Refusal(400, 'outside-folder', { where: name.slice(0, 200) });
  return steps.join('/');
}

export function makeBatches(media: MediaStore, now: () => Date) {
  const batches = new Map<string, Batch>();
  const keyOf = (unit: string, batch: string): string => `${unit}/${batch}`;

  return {
    get: (unit: string, batch: string): Batch | undefined => batches.get(keyOf(unit, batch)),
    /** Streams one file in. The same name again replaces it in the batch. Throws KeepProblem too-large. */
    async put(
      unit: string,
      id: string,
      name: string,
      bytes: AsyncIterable<Uint8Array>,
      limit: number,
    ): Promise<PutFileReply> {
      const key = keyOf(unit, id);
      const batch = batches.get(key) ?? { at: instantIn(id) ?? now().toISOString(), files: new Map() };
      if (batch.files.size >= mostFiles && !batch.files.has(name)) throw new Refusal(413, 'too-many-files');
      const { sha256, bytes: size } = await media.put(bytes, limit);
      const reply = { name, sha256, bytes: size };
      batch.files.set(name, reply);
      batches.set(key, batch);
      const oldest = batches.keys().next().value;
      if (batches.size > mostBatches && oldest !== undefined) batches.delete(oldest);
      return reply;
    },
    /** The batch's files as the readers want them. */
    walkFiles(unit: string, id: string, batch: Batch): readonly WalkFile[] {
      return [...batch.files.values()].map(({ name, sha256, bytes }) => ({
        name,
        size: bytes,
        media: { id: idFrom(batch.at, unit, id, name, sha256), sha256 },
        bytes: () => readAll(media, sha256),
        async text() {
          if (bytes > textLimit)
            throw new FileRefusal({
              file: name,
              line: 0,
              code: 'too-big',
              raw: '',
              detail: `${sizeOf(bytes)}|${sizeOf(textLimit)}`,
            });
          const pieces: Uint8Array[] = [];
          for await (const piece of readAll(media, sha256)) pieces.push(piece);
          return decodeText(Buffer.concat(pieces), name);
        },
      }));
    },
  };
}

async function* readAll(media: MediaStore, sha256: string): AsyncGenerator<Uint8Array> {
  const found = await media.open(sha256);
  if (!found) throw new Error(`media ${sha256} is not in the store`);
  yield* found;
}
