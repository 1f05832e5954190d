// Why: the embedded keeper: the journal is the truth, the index only answers.
import { join } from 'node:path';
import type { Entry } from '../../said/entry.ts';
import { importLines } from '../import-lines.ts';
import { Journal } from '../journal/journal.ts';
import { type SoundLine, writeLine } from '../journal/line.ts';
import type { Appended, Damage, Imported, Kept, Log, UnitRow, Wanted } from '../log.ts';
import { readEntries, readUnits } from '../tables/queries.ts';
import { Watchers } from '../watchers.ts';
import { Follower, type Progress } from './follow-journal.ts';

export interface EmbeddedOptions {
  readonly workerUrl?: URL;
  readonly progress?: Progress;
  readonly segmentBytes?: number;
}

export class EmbeddedLog implements Log {
  readonly #journal: Journal;
  readonly #follower: Follower;
  readonly #watchers: Watchers;

  private constructor(journal: Journal, follower: Follower, watchers: Watchers) {
    this.#journal = journal;
    this.#follower = follower;
    this.#watchers = watchers;
  }

  /** Resolves when the journal has been checked; the index goes on opening, and what reads waits for it. */
  static async open(folder: string, options: EmbeddedOptions = {}): Promise<EmbeddedLog> {
    const watchers = new Watchers();
    let follower: Follower | undefined;
    const onKept = (lines: readonly SoundLine[]): void => {
      follower?.push(lines);
      watchers.tell(lines.map(({ position, entry }) => ({ position, entry })));
    };
    const { segmentBytes } = options;
    const journal = await Journal.open(join(folder, 'journal'), {
      onKept,
      ...(segmentBytes ? { segmentBytes } : {}),
    });
    follower = new Follower(journal, join(folder, 'index'), options.workerUrl, options.progress);
    return new EmbeddedLog(journal, follower, watchers);
  }

  /** What the journal was found to be damaged by when it was opened. */
  get damage(): readonly Damage[] {
    return this.#journal.damage;
  }

  append(entries: readonly Entry[]): Promise<readonly Appended[]> {
    return this.#journal.append(entries);
  }

  async read(wanted: Wanted): Promise<readonly Kept[]> {
    return readEntries(await this.#follower.ready(), wanted);
  }

  async units(dealership: string): Promise<readonly UnitRow[]> {
    return readUnits(await this.#follower.ready(), dealership);
  }

  watch(listener: (kept: readonly Kept[]) => void): () => void {
    return this.#watchers.add(listener);
  }

  async *export(): AsyncGenerator<string> {
    for await (const { n, position, after, text } of this.#journal.lines()) {
      yield writeLine(n, position, after, text).line;
    }
  }

  import(
    lines: AsyncIterable<string> | Iterable<string>,
    progress?: (done: number) => void,
  ): Promise<Imported> {
    return importLines(lines, (entries) => this.append(entries), progress);
  }

  async close(): Promise<void> {
    await this.#journal.close();
    await this.#follower.close();
  }
}
