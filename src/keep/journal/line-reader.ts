// Why: an entry sent again is compared with the one on disk, so that every id's content need not be held in memory.
import { type FileHandle, open } from 'node:fs/promises';
import { join } from 'node:path';
import { KeepProblem } from '../problem.ts';
import type { Where } from './known-ids.ts';
import { readLine, type SoundLine } from './line.ts';
import { nameOf } from './segments.ts';

/** Reads single lines; keeps the last file open, since what is sent again lies close together. */
export class LineReader {
  readonly #folder: string;
  #file: { readonly segment: number; readonly handle: FileHandle } | undefined;

  constructor(folder: string) {
    this.#folder = folder;
  }

  /** Throws `journal-damaged` when the line is no longer sound. */
  async read(where: Where): Promise<SoundLine> {
    if (this.#file?.segment !== where.segment) {
      await this.close();
      const handle = await open(join(this.#folder, nameOf(where.segment)), 'r');
      this.#file = { segment: where.segment, handle };
    }
    const bytes = Buffer.alloc(where.length);
    await this.#file?.handle.read(bytes, 0, where.length, where.offset);
    const read = readLine(bytes);
    if (!('sound' in read)) throw new KeepProblem('journal-damaged', { file: nameOf(where.segment) });
    return read.sound;
  }

  async close(): Promise<void> {
    await this.#file?.handle.close();
    this.#file = undefined;
  }
}
