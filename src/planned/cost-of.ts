// Why: a job's cost is the shop's own money: its rate, its supplies; without its rates there is no cost.
import type { EntryOf } from '../said/entry.ts';
import { type Cents, cents } from '../units/money.ts';

type Range<T> = readonly [low: T, high: T];

/**
 * Labor at the shop's rate for the skill (or its default), parts, and supplies as a percentage of labor and parts together.
 * Each end is rounded to whole cents once. Undefined when the shop has neither a rate for the skill nor a default.
 */
export function costOf(
  hours: Range<number>,
  parts: Range<Cents>,
  skill: string,
  shop: EntryOf<'shop'> | undefined,
): Range<Cents> | undefined {
  const rates = shop?.laborCentsPerHour;
  const rate = rates && (Object.hasOwn(rates, skill) ? rates[skill] : rates.default);
  if (rate === undefined) return undefined;
  const supplies = 1 + (shop?.suppliesPercent ?? 0) / 100;
  const end = (i: 0 | 1): Cents => cents((hours[i] * rate + parts[i]) * supplies);
  return [end(0), end(1)];
}
