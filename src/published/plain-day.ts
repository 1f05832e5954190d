// Why: a date that a buyer reads must not be mistaken for another: day, month as a word, year.
import type { Observation } from '../said/entry.ts';
import { type Day, dayOf, daysBetween } from '../units/day.ts';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** "2026-11-24" -> "24 Nov 2026". */
export const plainDay = (day: Day): string =>
  `${Number(day.slice(8, 10))} ${months[Number(day.slice(5, 7)) - 1]} ${day.slice(0, 4)}`;

/** The last day on which any of these was observed. */
export function lastDayOf(evidence: readonly Observation[]): Day | undefined {
  const days = evidence.map((o) => dayOf(o.at)).sort();
  return days.at(-1);
}

/** House default, no source: a reading older than this many days carries its age in a listing. */
export const readingStaleAfterDays = 45;

/** "24 Nov 2026", and from a stale reading also how old it is. */
export function dayWithAge(of: Day, on: Day): string {
  const age = daysBetween(of, on);
  return age > readingStaleAfterDays ? `${plainDay(of)}, ${age} days ago` : plainDay(of);
}
