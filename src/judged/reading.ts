// Why: a rule compares a number with a limit; this reads a fact's value as the least and the most it may be, in the limit's unit.
import type { Value } from '../said/entry.ts';
import { hedgedDoubt } from '../standards/house/reading-doubt.ts';
import { limitOn } from '../standards/standard.ts';
import { type Day, daysBetween, readDay } from '../units/day.ts';
import { convert, isSameDimension } from '../units/quantity.ts';
import { type Unit, unitFact } from '../units/unit.ts';
import type { Must } from './rule.ts';

/** What a value may be, in the unit asked for. */
export interface Reading {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/**
 * Reads a value in `unit`; undefined when it is no number of that dimension. "No" and "absent" are zero where a limit
 * is a ceiling ("no cracks" is a crack of length nothing). A date is read as its age on the day, with the doubt of a
 * date that names only a month or a year. A hedged number with no plus-or-minus of its own gets the house's doubt.
 */
export function readingOf(
  value: Value,
  unit: Unit,
  must: Must,
  on: Day,
  isHedged: boolean,
): Reading | undefined {
  if (value.is === 'quantity') {
    // Minutes and hours are how long a test took, never how old a thing is.
    if (unit === 'a' && (value.unit === 's' || value.unit === 'min' || value.unit === 'h')) return undefined;
    const own =
      value.plusOrMinus ?? (isHedged ? (Math.abs(value.value) * limitOn(hedgedDoubt, on).value) / 100 : 0);
    const least = Math.min(value.value, value.upTo ?? value.value) - own;
    const most = Math.max(value.value, value.upTo ?? value.value) + own;
    const low = toUnit(least, value.unit, unit);
    const high = toUnit(most, value.unit, unit);
    return low === undefined || high === undefined ? undefined : { low, middle: (low + high) / 2, high };
  }
  if (value.is === 'count' && unit === '1') return exactly(value.count, isHedged ? 1 : 0);
  if (
    value.is === 'state' &&
    (value.state === 'no' || value.state === 'absent') &&
    (must === 'at most' || must === 'less than')
  ) {
    return exactly(0, 0);
  }
  if (value.is === 'text' && unitFact(unit).dimension === 'time') return ageOf(value.text, unit, on);
  return undefined;
}

const exactly = (n: number, doubt: number): Reading => ({ low: n - doubt, middle: n, high: n + doubt });

/** In the limit's unit. A spoken "degrees" does not tell a difference from a temperature; where the limit is a difference, it is one. */
function toUnit(n: number, from: Unit, to: Unit): number | undefined {
  if (isSameDimension(from, to)) return convert(n, from, to);
  if (unitFact(from).dimension === 'temperature' && unitFact(to).dimension === 'temperature-difference') {
    return (n * unitFact(from).factor) / unitFact(to).factor;
  }
  return undefined;
}

/** The age on a day of what bears a date "2021", "2021-05" or "2021-05-14". */
function ageOf(text: string, unit: Unit, on: Day): Reading | undefined {
  const m = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/.exec(text.trim());
  if (!m) return undefined;
  const [, year, month, date] = m;
  const first = readDay(`${year}-${month ?? '01'}-${date ?? '01'}`);
  // A day to come is a misreading, not a very young age.
  if (first === undefined || first > on) return undefined;
  const last = date !== undefined ? first : lastDay(Number(year), month === undefined ? 12 : Number(month));
  const [low, high] = [
    convert(calendarYears(last, on), 'a', unit),
    convert(calendarYears(first, on), 'a', unit),
  ];
  return { low, middle: (low + high) / 2, high };
}

function lastDay(year: number, month: number): Day {
  for (const d of ['31', '30', '29', '28']) {
    const found = readDay(`${year}-${String(month).padStart(2, '0')}-${d}`);
    if (found !== undefined) return found;
  }
  throw new RangeError(`lastDay: no month ${year}-${month}`);
}

/** Whole years by the calendar, and the part of the running year: an anniversary is a whole number. */
function calendarYears(from: Day, to: Day): number {
  if (from > to) return -calendarYears(to, from);
  const anniversary = (n: number): Day => {
    const year = Number(from.slice(0, 4)) + n;
    return readDay(`${String(year).padStart(4, '0')}${from.slice(4)}`) ?? (`${year}-02-28` as Day);
  };
  let whole = Number(to.slice(0, 4)) - Number(from.slice(0, 4));
  if (anniversary(whole) > to) whole -= 1;
  return (
    whole + daysBetween(anniversary(whole), to) / daysBetween(anniversary(whole), anniversary(whole + 1))
  );
}
