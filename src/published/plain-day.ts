// Why: a date that a buyer reads must not be mistaken for another: day, month as a word, year.
import type { Observation } from '../said/entry.ts';
import { type Day, dayOf, daysBetween } from '../units/day.ts';
import type { Unpublished } from './document.ts';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** "2026-11-24" -> "24 Nov 2026". */
export const plainDay = (day: Day): string =>
  `${Number(day.slice(8, 10))} ${months[Number(day.slice(5, 7)) - 1]} ${day.slice(0, 4)}`;

/** The last day on which any of these was observed. */
export function lastDayOf(evidence: readonly Observation[]): Day | undefined {
  const days = evidence.map((o) => dayOf(o.at)).sort();
  return days.at(-1);
}

/** The day of the walk: that on which most was observed, the later of two alike. Undefined where nothing was. */
export function walkDayOf({ record }: Pick<Unpublished, 'record'>): Day | undefined {
  const counts = new Map<Day, number>();
  for (const o of record.standing.values()) counts.set(dayOf(o.at), (counts.get(dayOf(o.at)) ?? 0) + 1);
  return [...counts].toSorted(([a, m], [b, n]) => n - m || (a < b ? 1 : -1))[0]?.[0];
}

/** House default, no source: a reading older than this many days carries its age in a listing. */
export const readingStaleAfterDays = 45;

/** "24 Nov 2026", and from a stale reading also how old it is. */
export function dayWithAge(of: Day, on: Day): string {
  const age = daysBetween(of, on);
  return age > readingStaleAfterDays ? `${plainDay(of)}, ${age} days ago` : plainDay(of);
}
