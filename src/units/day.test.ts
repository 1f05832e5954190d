// Why: days are counted by our own arithmetic; the language's Date, in UTC, says whether it is right.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  type Day,
  day,
  dayFromNumber,
  dayNumber,
  dayOf,
  daysBetween,
  readDay,
  weekday,
  yearsBetween,
} from './day.ts';

const msPerDay = 86_400_000;
const theirs = (n: number): string => new Date(n * msPerDay).toISOString().slice(0, 10);

describe('against Date', () => {
  test('every day from 1899 to 2120, and its weekday', () => {
    const first = Date.UTC(1899, 0, 1) / msPerDay;
    const last = Date.UTC(2120, 11, 31) / msPerDay;
    for (let n = first; n <= last; n++) {
      const ours = dayFromNumber(n);
      if (ours !== theirs(n) || dayNumber(ours) !== n || weekday(ours) !== new Date(n * msPerDay).getUTCDay())
        expect.fail(`day ${n}: ours ${ours}, theirs ${theirs(n)}`);
    }
    expect(last - first).toBeGreaterThan(80_000);
  });
  test('any day of the years 0 to 9999', () => {
    const [low, high] = [-719_528, 2_932_896];
    fc.assert(
      fc.property(fc.integer({ min: low, max: high }), (n) => {
        expect(dayFromNumber(n)).toBe(theirs(n));
        expect(dayNumber(theirs(n) as Day)).toBe(n);
      }),
      { seed: 20261207, numRuns: 2000 },
    );
  });
});

describe('reading', () => {
  test.each(['2026-11-24', '2024-02-29', '2000-02-29', '1970-01-01', '0000-03-01'])('%s is a day', (text) => {
    expect(readDay(text)).toBe(text);
  });
  test.each([
    '2026-02-29',
    '1900-02-29',
    '2026-13-01',
    '2026-00-10',
    '2026-04-31',
    '2026-1-1',
    '24.11.2026',
    '2026-11-24T00:00',
    '',
  ])('%j is none', (text) => {
    expect(readDay(text)).toBeUndefined();
    expect(() => day(text)).toThrow(RangeError);
  });
  test('an instant has the day that its writer saw', () => {
    expect(dayOf('2026-11-24T23:59:59-05:00')).toBe('2026-11-24');
    expect(() => dayOf('yesterday')).toThrow(RangeError);
  });
});

describe('counting', () => {
  const any = fc.integer({ min: -50_000, max: 60_000 }).map(dayFromNumber);
  test('so many days later is so many days between, both ways', () => {
    fc.assert(
      fc.property(any, fc.integer({ min: -40_000, max: 40_000 }), (from, n) => {
        const to = addDays(from, n);
        expect(daysBetween(from, to)).toBe(n);
        expect(daysBetween(to, from)).toBe(-n + 0);
        expect(to > from).toBe(n > 0);
      }),
      { seed: 20261208 },
    );
  });
  test('over a leap day, a year’s end, and 400 years', () => {
    expect(addDays(day('2024-02-28'), 1)).toBe('2024-02-29');
    expect(addDays(day('2023-02-28'), 1)).toBe('2023-03-01');
    expect(addDays(day('2025-12-31'), 1)).toBe('2026-01-01');
    expect(yearsBetween(day('1626-11-24'), day('2026-11-24'))).toBe(400);
  });
});
