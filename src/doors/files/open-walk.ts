// Why: a walk folder on disk, read whole: who, when and which unit come from its unit.json, or from the folder itself, said so.
import { stat } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { readTranscript } from '../../said/transcript/read-transcript.ts';
import type { AccountLine } from '../wire/api.ts';
import { sayFault, sayNoStart } from '../words/say-account.ts';
import { type About, idFrom } from './make-entries.ts';
import { readFolder, readText } from './read-folder.ts';
import { readWalkFacts } from './read-unit.ts';
import { type Understood, understand } from './understand.ts';
import { FileRefusal, type WalkFile } from './walk-file.ts';

export interface OpenWalk extends Understood {
  readonly about: About;
  readonly files: readonly WalkFile[];
}

/** A unit is the same unit in its next walk: its id comes from its stock number, not from the day. */
const epoch = '2020-01-01T00:00:00Z';

const whoIs = (stock: string | undefined, folder: string): string =>
  stock ?? `folder ${basename(resolve(folder))}`;
/** Links are not followed here either: `readText` refuses them, and the account names them. */
const factsIn = async (folder: string) =>
  readWalkFacts(await readText(join(folder, 'unit.json'), 'unit.json').catch(() => '{}'));

/** The id of the unit that a walk folder is about, without reading the walk. */
export const unitOf = async (folder: string, dealership: string): Promise<string> =>
  idFrom(epoch, dealership, whoIs((await factsIn(folder)).stock, folder));

/** Throws FileRefusal when the folder cannot be read at all, and what the signal was aborted with. */
export async function openWalk(
  folder: string,
  options: {
    readonly dealership: string;
    readonly progress?: (share: number, doing: string) => void;
    readonly signal?: AbortSignal;
  },
): Promise<OpenWalk> {
  const { dealership, progress = () => {}, signal } = options;
  const facts = await factsIn(folder);
  const hasStart = facts.walked !== undefined;
  const at = facts.walked ?? (await startByFiles(folder));
  const who = whoIs(facts.stock, folder);
  const seed = `${dealership} ${who} ${at}`;
  const unit = idFrom(epoch, dealership, who);
  const about: About = {
    dealership,
    unit,
    walk: idFrom(at, seed, 'walk'),
    by: facts.by ?? 'somebody',
    device: facts.device ?? 'not named',
    at,
    seed,
    title: facts.title ?? `Walk of ${at.slice(0, 10)}`,
  };
  const read = await readFolder(folder, {
    at,
    seed,
    progress: (share, file) => progress(share * 0.4, file),
    ...(signal ? { signal } : {}),
  });
  const understood = await understand(
    read.files,
    about,
    (share, doing) => progress(0.4 + share * 0.6, doing),
    signal,
  );
  const account: AccountLine[] = [
    ...(hasStart ? [] : [sayNoStart(at)]),
    ...read.refused.map((fault) => sayFault(fault, 'refused')),
    ...understood.account,
  ];
  return { about, files: read.files, entries: understood.entries, account };
}

const transcripts = ['walk.vtt', 'walk.srt', 'walk.json', 'walk.txt'];

/**
 * When the walk began, from the time a file was last written: the only time there is when nobody wrote one down. The words
 * of a recording end then, so that nothing is said to have been seen later than the file that holds it.
 */
async function startByFiles(folder: string): Promise<string> {
  for (const name of [...transcripts, 'readings.csv', '.']) {
    const found = await stat(join(folder, name)).catch(() => undefined);
    if (!found) continue;
    const seconds = transcripts.includes(name) ? await secondsIn(folder, name) : 0;
    return new Date(Math.max(0, Math.floor(found.mtimeMs / 1000 - seconds)) * 1000).toISOString();
  }
  throw new FileRefusal({ file: folder, line: 0, code: 'no-folder', raw: '' });
}

/** How far into the recording the last words of a transcript end; 0 when it cannot be read. */
async function secondsIn(folder: string, name: string): Promise<number> {
  try {
    const { cues } = readTranscript(name, await readText(join(folder, name), name));
    return Math.ceil(cues.reduce((last, cue) => Math.max(last, cue.end), 0));
  } catch (error) {
    if (error instanceof FileRefusal) return 0;
    throw error;
  }
}
