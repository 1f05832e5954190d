// Why: keeps the index up with the journal, behind the back of whoever appends, and tells readers when it has got there.
import { type Kysely, sql } from 'kysely';
import type { Journal } from '../journal/journal.ts';
import type { SoundLine } from '../journal/line.ts';
import { KeepProblem } from '../problem.ts';
import type { Tables } from '../tables/schema.ts';
import { emptyIndex, type IndexState, takeIn } from './index-state.ts';
import { type OpenIndex, openIndex } from './open-index.ts';

/** Told while the index is being built or caught up. `done` and `of` count entries. */
export type Progress = (at: { readonly doing: 'index'; readonly done: number; readonly of: number }) => void;

const linesAtOnce = 500;
const bytesAtOnce = 4 * 1024 * 1024;
/** Above this many waiting lines the file is read again instead of holding them in memory. */
const mostWaiting = 5000;

export class Follower {
  readonly #journal: Journal;
  readonly #progress: Progress | undefined;
  readonly #opening: Promise<OpenIndex>;
  #recent: SoundLine[] = [];
  #running: Promise<void> | undefined;
  #state: IndexState = emptyIndex;
  #closed = false;

  constructor(journal: Journal, folder: string, workerUrl?: URL, progress?: Progress) {
    this.#journal = journal;
    this.#progress = progress;
    this.#opening = openIndex(folder, journal, workerUrl);
    this.#opening.catch(() => undefined);
    this.#start();
  }

  /** Hands over lines just kept. */
  push(lines: readonly SoundLine[]): void {
    if (this.#recent.length + lines.length > mostWaiting) this.#recent = [];
    this.#recent.push(...lines);
    this.#start();
  }

  /** The index, once it holds everything kept before this was asked. */
  async ready(): Promise<Kysely<Tables>> {
    const wanted = this.#journal.reached.n;
    const { db } = await this.#opening;
    while (this.#state.n < wanted) {
      if (this.#closed) throw new KeepProblem('closed');
      this.#start();
      await this.#running;
    }
    return db;
  }

  async close(): Promise<void> {
    this.#closed = true;
    await this.#running?.catch(() => undefined);
    const index = await this.#opening.catch(() => undefined);
    await index?.db.destroy();
  }

  #start(): void {
    if (this.#running || this.#closed) return;
    this.#running = this.#follow().finally(() => {
      this.#running = undefined;
    });
    this.#running.catch(() => undefined);
  }

  async #follow(): Promise<void> {
    const { db, state } = await this.#opening;
    if (this.#state === emptyIndex) this.#state = state;
    while (this.#state.n < this.#journal.reached.n && !this.#closed) {
      const first = this.#recent[0];
      if (first && first.after === this.#state.sum) {
        await this.#takeIn(db, this.#recent.splice(0, linesAtOnce));
        continue;
      }
      await this.#fromFile(db);
      const reached = this.#state.n;
      this.#recent = this.#recent.filter((line) => line.n > reached);
    }
  }

  async #fromFile(db: Kysely<Tables>): Promise<void> {
    const upTo = this.#journal.reached.n;
    const of = this.#journal.count;
    let batch: SoundLine[] = [];
    let bytes = 0;
    const flush = async (): Promise<void> => {
      const { lines } = await this.#takeIn(db, batch);
      batch = [];
      bytes = 0;
      this.#progress?.({ doing: 'index', done: Math.min(lines, of), of });
    };
    for await (const line of this.#journal.lines(this.#state.n)) {
      if (this.#closed) return;
      batch.push(line);
      bytes += line.text.length;
      if (batch.length >= linesAtOnce || bytes >= bytesAtOnce) await flush();
    }
    if (batch.length > 0) await flush();
    if (this.#state.n < upTo) throw new KeepProblem('journal-damaged', { file: 'journal' });
    // Nothing does this by itself in PGlite, and without it the planner guesses.
    await sql`analyze walkwright.entry`.execute(db);
  }

  async #takeIn(db: Kysely<Tables>, lines: readonly SoundLine[]): Promise<IndexState> {
    this.#state = await takeIn(db, this.#state, lines);
    return this.#state;
  }
}
