// Why: most limits have had one value since they were read; this writes such a one down without ceremony.
import type { Day } from '../units/day.ts';
import type { Unit } from '../units/unit.ts';
import type { Citation, Limit } from './standard.ts';

/** A limit with a single dated value. */
export const limitOf = (
  id: string,
  what: string,
  unit: Unit,
  from: Day,
  value: number,
  ...citations: [Citation, ...Citation[]]
): Limit => ({
  id,
  what,
  unit,
  values: [{ from, value, citations }],
});
