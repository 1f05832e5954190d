// Why: keeping an entry must cost no more than a plain insert into a database that syncs, or nobody would keep everything.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import pg from 'pg';
import { Journal } from '../src/keep/journal/journal.ts';
import type { Entry } from '../src/said/entry.ts';
import { madeEntry } from '../test/faults/keep-entries.ts';
import { startPostgres } from '../test/postgres.ts';
import type { Measured } from './main.ts';

const entries = 1000;
const rounds = 3;
const callers = 32;
const table = 'create table entry (id text primary key, entry json not null)';
const insert = 'insert into entry (id, entry) values ($1, $2)';

type Keep = (entry: Entry) => Promise<unknown>;

/** Entries a second, with so many callers at once, each waiting for its own acknowledgement. */
async function perSecond(keep: Keep, from: number, atOnce: number): Promise<number> {
  let next = from;
  const began = performance.now();
  const keepOn = async (): Promise<void> => {
    while (next < from + entries) await keep(madeEntry(next++));
  };
  await Promise.all(Array.from({ length: atOnce }, keepOn));
  return (entries * 1000) / (performance.now() - began);
}

const middle = (of: readonly number[]): number =>
  [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)] ?? 0;
const show = (rate: number): string => `${Math.round(rate).toLocaleString('en-US')} a second`;

/** Appends to the journal beside single inserts: PostgreSQL with fsync on, and PGlite as shipped, which never syncs. */
export async function benchAppend(): Promise<readonly Measured[]> {
  const folder = await mkdtemp(join(tmpdir(), 'walkwright-bench-'));
  const postgres = await startPostgres();
  const pool = new pg.Pool({ connectionString: postgres.url, max: callers });
  // A connection that is still closing when the server stops is no matter.
  pool.on('error', () => undefined);
  const pglite = await PGlite.create({ dataDir: join(folder, 'pglite') });
  await pool.query(table);
  await pglite.exec(table);
  const journal = await Journal.open(join(folder, 'journal'));
  const keepers: readonly Keep[] = [
    (entry) => journal.append([entry]),
    (entry) => pool.query(insert, [entry.id, JSON.stringify(entry)]),
    (entry) => pglite.query(insert, [entry.id, JSON.stringify(entry)]),
  ];
  const rows: Measured[] = [];
  let from = 0;
  for (const atOnce of [1, callers]) {
    const rates: number[][] = keepers.map(() => []);
    for (let round = 0; round < rounds; round++) {
      for (const [at, keep] of keepers.entries()) rates[at]?.push(await perSecond(keep, from, atOnce));
      from += entries;
    }
    const [ours, theirs, unsynced] = rates.map(middle) as [number, number, number];
    const name = atOnce === 1 ? 'append, one after the other' : `append, ${atOnce} callers at once`;
    const against = (what: string, rate: number): Measured => ({
      name,
      measured: show(ours),
      instead: `${what}: ${show(rate)}`,
      ratio: `${(ours / rate).toFixed(1)} x as many`,
    });
    rows.push(
      against('INSERT into PostgreSQL, fsync on', theirs),
      against('INSERT into PGlite as shipped, no sync', unsynced),
    );
  }
  await journal.close();
  await pglite.close();
  await pool.end();
  await postgres.stop();
  await rm(folder, { recursive: true, force: true });
  return rows;
}
