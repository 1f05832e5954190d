// Why: the tables, as the queries see them: the same in the embedded index and in PostgreSQL.
import type { Insertable } from 'kysely';

/** Every key starts with the dealership, so that the tables can be spread by tenant. */
export interface EntryTable {
  dealership: string;
  unit: string;
  position: number;
  id: string;
  kind: string;
  /** When it was observed, as the entry says it: milliseconds since 1970, for sorting. */
  at_ms: number;
  /** The entry's JSON, exactly as kept. */
  entry: string;
}

/** What the index has taken in of the journal: one row. Not used where PostgreSQL is the truth. */
export interface IndexStateTable {
  one: boolean;
  n: number;
  sum: string;
  lines: number;
}

export interface MigrationTable {
  name: string;
}

export interface Tables {
  'walkwright.entry': EntryTable;
  'walkwright.index_state': IndexStateTable;
  'walkwright.migration': MigrationTable;
}

export type EntryRow = Insertable<EntryTable>;
