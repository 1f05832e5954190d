// Why: another unit's price says something of this one only after the differences between them have been priced, in the open.
import type { Comparable } from '../said/entry.ts';
import { type Day, day, daysBetween } from '../units/day.ts';
import { type Cents, cents, dollars } from '../units/money.ts';
import { type Rates, weighing } from './adjustment.ts';
import type { OwnFigures, OwnName } from './own-figures.ts';
import type { AdjustedComparable } from './price.ts';

/** What it sold for, or what it would be expected to sell for; undefined when it has no price at all. */
export function baseOf(c: Comparable, rates: Rates): Cents | undefined {
  if (c.soldCents !== undefined) return cents(c.soldCents);
  return c.askCents === undefined ? undefined : cents(c.askCents * rates.askToSold);
}

/**
 * The comparable brought to this unit, and how much it counts. What either of them lacks adjusts nothing.
 * @param condition what the comparable's condition is worse (+) or better (-) by, in cents, where somebody has said so
 */
export function adjustComparable(
  c: Comparable,
  base: Cents,
  own: OwnFigures['own'],
  rates: Rates,
  on: Day,
  condition: Cents | undefined,
): AdjustedComparable {
  const adjustments = [
    { what: 'year', amount: yearAmount(c, base, own.year, rates, on) },
    { what: 'miles', amount: milesAmount(c, base, own.miles, rates) },
    { what: 'length, slides, power', amount: groupAmount(c, base, own, rates) },
    { what: 'generator hours', amount: generatorAmount(c, base, own.generatorHours, rates) },
    { what: 'condition', amount: condition ?? cents(0) },
  ].filter((a) => a.amount !== 0);
  const adjusted = cents(base + adjustments.reduce((sum, a) => sum + a.amount, 0));
  const gross = base === 0 ? 1 : adjustments.reduce((sum, a) => sum + Math.abs(a.amount), 0) / base;
  return {
    comparable: c,
    base,
    adjustments,
    adjusted,
    grossPercent: gross * 100,
    weight: weightOf(c, own, gross, on),
  };
}

/** Compound, a model year at a time; a year in which the older one is past the old age counts half. */
function yearAmount(c: Comparable, base: Cents, year: number | undefined, rates: Rates, on: Day): Cents {
  if (year === undefined) return cents(0);
  let factor = 1;
  for (let y = Math.min(year, c.year); y < Math.max(year, c.year); y++) {
    const isOld = Number(on.slice(0, 4)) - y > rates.oldAge;
    factor *= 1 - (isOld ? rates.year / 2 : rates.year);
  }
  return cents(c.year > year ? base * factor - base : base / factor - base);
}

function milesAmount(c: Comparable, base: Cents, miles: number | undefined, rates: Rates): Cents {
  if (miles === undefined || c.miles === undefined) return cents(0);
  return capped(dollars((c.miles - miles) * rates.mile), base * rates.milesCap);
}

function groupAmount(c: Comparable, base: Cents, own: OwnFigures['own'], rates: Rates): Cents {
  const of = (mine: number | undefined, its: number | undefined, rate: number): number =>
    mine === undefined || its === undefined ? 0 : (mine - its) * rate;
  const sum =
    of(own.lengthFt, c.lengthFt, rates.foot) +
    of(own.slides, c.slides, rates.slide) +
    of(own.powerHp, c.powerHp, rates.horsepower);
  return capped(dollars(sum), base * rates.groupCap);
}

function generatorAmount(c: Comparable, base: Cents, hours: number | undefined, rates: Rates): Cents {
  if (hours === undefined || c.generatorHours === undefined) return cents(0);
  const worn = (h: number): number => Number(h > rates.generatorHours);
  return cents((worn(c.generatorHours) - worn(hours)) * rates.generator * base);
}

const capped = (amount: Cents, most: number): Cents => cents(Math.max(-most, Math.min(most, amount)));

const columns: readonly OwnName[] = ['lengthFt', 'miles', 'slides', 'powerHp'];

function weightOf(c: Comparable, own: OwnFigures['own'], gross: number, on: Day): number {
  const missing = columns.filter((name) => own[name] !== undefined && c[name] === undefined).length;
  return (
    0.5 ** (daysBetween(day(c.on), on) / weighing.daysToHalf) *
    0.5 ** ((c.milesAway ?? 0) / weighing.milesToHalf) *
    Math.max(weighing.leastForGross, 1 - 2 * gross) *
    (c.soldCents === undefined ? 1 : weighing.sold) *
    weighing.missingColumn ** missing
  );
}
