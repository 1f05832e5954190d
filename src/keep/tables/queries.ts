// Why: what is asked of the tables, once, for the embedded index and PostgreSQL alike.
import type { Kysely } from 'kysely';
import type { Entry } from '../../said/entry.ts';
import type { Kept, Position, UnitRow, Wanted } from '../log.ts';
import type { EntryRow, Tables } from './schema.ts';

type Db = Kysely<Tables>;

/** PostgreSQL takes at most 65,535 parameters in one statement. */
const idsAtOnce = 10_000;
const rowsAtOnce = 1000;

function toKept(row: { readonly position: number; readonly entry: string }): Kept {
  return { position: Number(row.position), entry: JSON.parse(row.entry) as Entry };
}

export async function readEntries(db: Db, wanted: Wanted): Promise<Kept[]> {
  let query = db
    .selectFrom('walkwright.entry')
    .select(['position', 'entry'])
    .where('dealership', '=', wanted.dealership)
    .orderBy('position');
  if (wanted.unit !== undefined) query = query.where('unit', '=', wanted.unit);
  if (wanted.after !== undefined) query = query.where('position', '>', wanted.after);
  if (wanted.limit !== undefined) query = query.limit(wanted.limit);
  const rows = await query.execute();
  return rows.map(toKept);
}

/** The units of a yard, the one that was first seen first. */
export async function readUnits(db: Db, dealership: string): Promise<UnitRow[]> {
  const rows = await db
    .selectFrom('walkwright.entry')
    .select((on) => [
      'unit',
      on.fn.countAll<number>().as('entries'),
      on.fn.min('at_ms').as('first'),
      on.fn.max('position').as('last'),
    ])
    .where('dealership', '=', dealership)
    .groupBy('unit')
    .orderBy('first')
    .orderBy('unit')
    .execute();
  return rows.map((row) => ({
    unit: row.unit,
    entries: Number(row.entries),
    firstAt: new Date(Number(row.first)).toISOString(),
    last: Number(row.last),
  }));
}

/** Those of the ids that are there already. */
export async function findEntries(db: Db, dealership: string, ids: readonly string[]): Promise<Kept[]> {
  const found: Kept[] = [];
  for (let from = 0; from < ids.length; from += idsAtOnce) {
    const rows = await db
      .selectFrom('walkwright.entry')
      .select(['position', 'entry'])
      .where('dealership', '=', dealership)
      .where('id', 'in', ids.slice(from, from + idsAtOnce))
      .execute();
    found.push(...rows.map(toKept));
  }
  return found;
}

export async function lastPosition(db: Db, dealership: string): Promise<Position> {
  const row = await db
    .selectFrom('walkwright.entry')
    .select((on) => on.fn.max('position').as('last'))
    .where('dealership', '=', dealership)
    .executeTakeFirst();
  return Number(row?.last ?? 0);
}

/** The last position of every dealership. */
export async function lastPositions(db: Db): Promise<Map<string, Position>> {
  const rows = await db
    .selectFrom('walkwright.entry')
    .select((on) => ['dealership', on.fn.max('position').as('last')])
    .groupBy('dealership')
    .orderBy('dealership')
    .execute();
  return new Map(rows.map((row) => [row.dealership, Number(row.last)]));
}

/** A row of the table. `text` is the entry's JSON. An instant that cannot be read sorts as 1970. */
export function toRow(position: Position, entry: Entry, text: string): EntryRow {
  const at = Date.parse(entry.at);
  const { dealership, unit, id, kind } = entry;
  return { dealership, unit, position, id, kind, at_ms: Number.isFinite(at) ? at : 0, entry: text };
}

export async function insertRows(db: Db, rows: readonly EntryRow[]): Promise<void> {
  for (let from = 0; from < rows.length; from += rowsAtOnce) {
    await db
      .insertInto('walkwright.entry')
      .values(rows.slice(from, from + rowsAtOnce))
      .execute();
  }
}
