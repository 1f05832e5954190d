// Why: a published number is worth what its citation is worth, so the compiler demands one for every value.
import { type Day, dayNumber } from '../units/day.ts';
import type { Unit } from '../units/unit.ts';

/** How binding a source is. Told apart wherever a verdict is shown. */
export type Standing = 'law' | 'standard' | 'maker' | 'trade practice' | 'house default';

/** A publication. */
export interface Source {
  readonly id: string;
  readonly title: string;
  readonly publisher: string;
  readonly edition: string;
  readonly standing: Standing;
  /** Where it can be read; absent for trade practice. */
  readonly address?: string;
  /** What the reader must know before leaning on it: whom it binds, what was not verified. */
  readonly scope: string;
}

/** One place in a source. */
export interface Citation {
  readonly source: Source;
  /** "393.75(b)"; "no source" for a fact of the trade with no publication. */
  readonly clause: string;
  /** What it says, in our words. */
  readonly says: string;
  /** The day it was read at its address; "from memory" where it was not. */
  readonly read: Day | 'from memory' | 'common practice';
}

/** A value in force from a day on. */
export interface DatedValue {
  readonly from: Day;
  readonly value: number;
  readonly citations: readonly [Citation, ...Citation[]];
}

/** A published limit: a series of dated values, newest last. */
export interface Limit {
  readonly id: string;
  readonly what: string;
  readonly unit: Unit;
  readonly values: readonly [DatedValue, ...DatedValue[]];
}

/** The value in force on a day; the first one for days before it. */
export function limitOn(limit: Limit, on: Day): DatedValue {
  let found = limit.values[0];
  for (const v of limit.values) if (dayNumber(v.from) <= dayNumber(on)) found = v;
  return found;
}

/** A published table of rows, with where it was read. */
export interface Table<Row> {
  readonly id: string;
  readonly what: string;
  readonly citation: Citation;
  readonly rows: readonly Row[];
}
