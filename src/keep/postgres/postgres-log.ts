// Why: the keeper of a dealership that has outgrown one folder: PostgreSQL is the truth, for any number of processes.
import { Kysely, PostgresDialect, sql } from 'kysely';
import type { Entry } from '../../said/entry.ts';
import { canonicalJson } from '../canonical.ts';
import { importLines } from '../import-lines.ts';
import { origin, writeLine } from '../journal/line.ts';
import type { Appended, Imported, Kept, Log, Position, UnitRow, Wanted } from '../log.ts';
import { errorCode, KeepProblem } from '../problem.ts';
import { migrate } from '../tables/migrate.ts';
import {
  findEntries,
  insertRows,
  lastPosition,
  lastPositions,
  readEntries,
  readUnits,
  toRow,
} from '../tables/queries.ts';
import type { EntryRow, Tables } from '../tables/schema.ts';
import { Watchers } from '../watchers.ts';
import { channel, Listener } from './listener.ts';
import { openPool } from './open-pool.ts';

/** Any number, always the same: what the lock of a dealership is hashed with. */
const appendLock = 31_180_409;
const exportedAtOnce = 1000;

export class PostgresLog implements Log {
  readonly #db: Kysely<Tables>;
  readonly #watchers: Watchers;
  readonly #listener: Listener;
  #closed = false;

  private constructor(db: Kysely<Tables>, watchers: Watchers, listener: Listener) {
    this.#db = db;
    this.#watchers = watchers;
    this.#listener = listener;
  }

  /** Connects, brings the tables up to date and begins to listen. Throws the `database-...` problems. */
  static async open(url: string): Promise<PostgresLog> {
    const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool: await openPool(url) }) });
    try {
      await migrate(db);
      const watchers = new Watchers();
      return new PostgresLog(db, watchers, await Listener.open(url, db, watchers));
    } catch (error) {
      await db.destroy();
      throw coded(error);
    }
  }

  /** One transaction: all of these entries are kept, or none is. */
  async append(entries: readonly Entry[]): Promise<readonly Appended[]> {
    if (this.#closed) throw new KeepProblem('closed');
    if (entries.length === 0) return [];
    return this.#db
      .transaction()
      .execute((trx) => appendIn(trx, entries))
      .catch((error) => Promise.reject(coded(error)));
  }

  async read(wanted: Wanted): Promise<readonly Kept[]> {
    return readEntries(this.#db, wanted).catch((error) => Promise.reject(coded(error)));
  }

  async units(dealership: string): Promise<readonly UnitRow[]> {
    return readUnits(this.#db, dealership).catch((error) => Promise.reject(coded(error)));
  }

  watch(listener: (kept: readonly Kept[]) => void): () => void {
    return this.#watchers.add(listener);
  }

  /** One dealership after the other; what is kept meanwhile may be left out. */
  async *export(): AsyncGenerator<string> {
    let n = 0;
    let after = origin;
    for (const [dealership, last] of await lastPositions(this.#db)) {
      let position: Position = 0;
      while (position < last) {
        const kept = await readEntries(this.#db, { dealership, after: position, limit: exportedAtOnce });
        for (const one of kept) {
          const { line, sum } = writeLine(++n, one.position, after, JSON.stringify(one.entry));
          after = sum;
          yield line;
        }
        position = kept.at(-1)?.position ?? last;
      }
    }
  }

  import(
    lines: AsyncIterable<string> | Iterable<string>,
    progress?: (done: number) => void,
  ): Promise<Imported> {
    return importLines(lines, (entries) => this.append(entries), progress);
  }

  async close(): Promise<void> {
    if (this.#closed) return;
    this.#closed = true;
    await this.#listener.close();
    await this.#db.destroy();
  }
}

async function appendIn(trx: Kysely<Tables>, entries: readonly Entry[]): Promise<Appended[]> {
  const answers: Appended[] = new Array(entries.length);
  for (const dealership of [...new Set(entries.map((entry) => entry.dealership))].sort()) {
    // Held until the commit, so positions become visible in the order in which they were given.
    await sql`select pg_advisory_xact_lock(hashtextextended(${dealership}, ${sql.lit(appendLock)}))`.execute(
      trx,
    );
    const own = entries.filter((entry) => entry.dealership === dealership);
    const there = new Map(
      (
        await findEntries(
          trx,
          dealership,
          own.map((entry) => entry.id),
        )
      ).map((k) => [k.entry.id, k]),
    );
    let position = await lastPosition(trx, dealership);
    const rows: EntryRow[] = [];
    for (const [at, entry] of entries.entries()) {
      if (entry.dealership !== dealership) continue;
      const { id } = entry;
      const before = there.get(id);
      if (before) {
        const same = canonicalJson(before.entry) === canonicalJson(entry);
        answers[at] = same
          ? { is: 'already kept', id, position: before.position }
          : { is: 'refused', id, code: 'id-taken' };
        continue;
      }
      position++;
      rows.push(toRow(position, entry, JSON.stringify(entry)));
      there.set(id, { position, entry });
      answers[at] = { is: 'kept', id, position };
    }
    if (rows.length === 0) continue;
    await insertRows(trx, rows);
    await sql`select pg_notify(${channel}, ${dealership})`.execute(trx);
  }
  return answers;
}

/** Lost connections and a server that is going away are problems; what SQL itself refuses is a mistake of ours and stays as it is. */
function coded(error: unknown): unknown {
  const code = errorCode(error);
  if (code === '53100') return new KeepProblem('disk-full', { errno: code }, error);
  const lost =
    /^(E[A-Z]+|08...|57P0.|53...|28...|3D...)$/.test(code) ||
    (error instanceof Error && /terminated|timeout/.test(error.message));
  return lost && !(error instanceof KeepProblem)
    ? new KeepProblem('database-unreachable', { errno: code }, error)
    : error;
}
