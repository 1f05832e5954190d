// Why: photos and recordings are kept by what they are: the hash of the bytes is their only name.
import { createHash, randomUUID } from 'node:crypto';
import { constants, createReadStream } from 'node:fs';
import { type FileHandle, lstat, open, readdir, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { makeFolder, syncFolder } from './journal/segments.ts';
import type { MediaStore } from './log.ts';
import { errorCode, KeepProblem } from './problem.ts';

const hash = /^[0-9a-f]{64}$/;
/** An unfinished file this old belongs to nobody. */
const abandonedAfter = 24 * 3600 * 1000;

/**
 * Media in a folder: `ab/abcdef...`. What is not a SHA-256 in lower-case hex is not there, so no name leads outside.
 * `put` throws `too-large` (data: limit, bytes) or `disk-full`, and then leaves nothing behind.
 */
export async function openMediaFolder(folder: string): Promise<MediaStore> {
  const incoming = join(folder, 'incoming');
  await makeFolder(incoming);
  await sweep(incoming);
  const pathOf = (sha256: string): string => join(folder, sha256.slice(0, 2), sha256);

  const size = async (sha256: string): Promise<number | undefined> => {
    if (!hash.test(sha256)) return undefined;
    const found = await lstat(pathOf(sha256)).catch(() => undefined);
    return found?.isFile() ? found.size : undefined;
  };

  return {
    async put(bytes, limit) {
      const arriving = join(incoming, randomUUID());
      const file = await open(arriving, 'wx', 0o600);
      try {
        const took = await writeAll(file, bytes, limit);
        await file.sync();
        await file.close();
        if ((await size(took.sha256)) !== took.bytes) {
          const own = join(folder, took.sha256.slice(0, 2));
          await makeFolder(own);
          await rename(arriving, pathOf(took.sha256));
          await syncFolder(own);
        }
        return took;
      } catch (error) {
        const code = errorCode(error);
        throw code === 'ENOSPC' || code === 'EDQUOT'
          ? new KeepProblem('disk-full', { errno: code }, error)
          : error;
      } finally {
        await file.close().catch(() => undefined);
        await rm(arriving, { force: true });
      }
    },
    async has(sha256) {
      return (await size(sha256)) !== undefined;
    },
    async open(sha256, range) {
      const bytes = await size(sha256);
      if (bytes === undefined) return undefined;
      const file = await open(pathOf(sha256), constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0));
      const start = Math.max(0, range?.start ?? 0);
      const end = Math.min(bytes - 1, range?.end ?? bytes - 1);
      if (start > end) {
        await file.close();
        return nothing();
      }
      return createReadStream('', { fd: file, start, end, autoClose: true });
    },
    size,
  };
}

async function* nothing(): AsyncGenerator<Uint8Array> {}

async function writeAll(
  file: FileHandle,
  bytes: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
  limit: number | undefined,
): Promise<{ sha256: string; bytes: number }> {
  const sum = createHash('sha256');
  let done = 0;
  for await (const chunk of bytes) {
    if (limit !== undefined && done + chunk.length > limit) throw new KeepProblem('too-large', { limit });
    sum.update(chunk);
    for (let written = 0; written < chunk.length; ) {
      written += (await file.write(chunk, written, chunk.length - written, done + written)).bytesWritten;
    }
    done += chunk.length;
  }
  return { sha256: sum.digest('hex'), bytes: done };
}

async function sweep(incoming: string): Promise<void> {
  for (const name of await readdir(incoming)) {
    const found = await stat(join(incoming, name)).catch(() => undefined);
    if (found && Date.now() - found.mtimeMs > abandonedAfter) await rm(join(incoming, name), { force: true });
  }
}
