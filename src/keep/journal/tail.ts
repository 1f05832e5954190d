// Why: the end of the journal, where bytes are written and synced; a failure leaves it as it was, or shut.
import { type FileHandle, open } from 'node:fs/promises';
import { join } from 'node:path';
import { errorCode, KeepProblem } from '../problem.ts';
import { nameOf, syncFolder } from './segments.ts';

export class Tail {
  readonly #folder: string;
  #file: FileHandle | undefined;
  #segment = 0;
  #size = 0;
  #broken: KeepProblem | undefined;

  constructor(folder: string) {
    this.#folder = folder;
  }

  /** The segment being written; 0 when there is none yet. */
  get segment(): number {
    return this.#segment;
  }

  /** Sound, synced bytes in it. */
  get size(): number {
    return this.#size;
  }

  /** Goes on with a segment that ends at `size`. */
  async resume(segment: number, size: number): Promise<void> {
    this.#file = await open(join(this.#folder, nameOf(segment)), 'r+');
    this.#segment = segment;
    this.#size = size;
  }

  /** Begins the next segment; its name is on disk before anything is written into it. */
  async begin(): Promise<void> {
    this.#refuseWhenBroken();
    const next = this.#segment + 1;
    const path = join(this.#folder, nameOf(next));
    const file = await open(path, 'wx').catch((error) => Promise.reject(unwritten(error)));
    try {
      await syncFolder(this.#folder);
    } catch (error) {
      await file.close();
      throw this.#break(error);
    }
    await this.#file?.close();
    this.#file = file;
    this.#segment = next;
    this.#size = 0;
  }

  /**
   * Resolves when the bytes are on disk. Throws `disk-full` or `write-failed` when nothing was kept, and `journal-failed` when
   * the sync failed: then nobody knows what the disk holds, and nothing more is taken until the folder is opened again.
   */
  async append(bytes: Buffer): Promise<void> {
    this.#refuseWhenBroken();
    const file = this.#file as FileHandle;
    try {
      for (let done = 0; done < bytes.length; ) {
        done += (await file.write(bytes, done, bytes.length - done, this.#size + done)).bytesWritten;
      }
    } catch (error) {
      await this.#cutBack(file);
      throw unwritten(error);
    }
    try {
      await file.sync();
    } catch (error) {
      throw this.#break(error);
    }
    this.#size += bytes.length;
  }

  async close(): Promise<void> {
    await this.#file?.close();
    this.#file = undefined;
  }

  async #cutBack(file: FileHandle): Promise<void> {
    try {
      await file.truncate(this.#size);
      await file.sync();
    } catch (error) {
      throw this.#break(error);
    }
  }

  #refuseWhenBroken(): void {
    if (this.#broken) throw this.#broken;
  }

  #break(error: unknown): KeepProblem {
    this.#broken = new KeepProblem('journal-failed', { errno: errorCode(error) }, error);
    return this.#broken;
  }
}

function unwritten(error: unknown): KeepProblem {
  const errno = errorCode(error);
  return new KeepProblem(
    errno === 'ENOSPC' || errno === 'EDQUOT' ? 'disk-full' : 'write-failed',
    { errno },
    error,
  );
}
