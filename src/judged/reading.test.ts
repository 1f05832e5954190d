// Why: a number is only as good as the unit and the doubt it is read with.
import { describe, expect, test } from 'vitest';
import { day } from '../units/day.ts';
import { readingOf } from './reading.ts';

const on = day('2026-11-24');

describe('a reading in the unit of the limit', () => {
  test('converts, with its plus-or-minus, and keeps a range whole', () => {
    const r = readingOf(
      { is: 'quantity', value: 5, unit: 'Cel', plusOrMinus: 1 },
      '[degF]',
      'at most',
      on,
      false,
    )!;
    expect([r.low, r.middle, r.high].map((n) => Math.round(n * 10) / 10)).toEqual([39.2, 41, 42.8]);
    expect(
      readingOf({ is: 'quantity', value: 5, upTo: 6, unit: '[in_i]' }, '[in_i]', 'at most', on, false),
    ).toEqual({ low: 5, middle: 5.5, high: 6 });
  });

  test('a difference may have been said in degrees; a temperature never comes out of a difference', () => {
    expect(
      readingOf({ is: 'quantity', value: 18, unit: '[degF]' }, '[degF]{difference}', 'at least', on, false)
        ?.middle,
    ).toBeCloseTo(18, 12);
    expect(
      readingOf({ is: 'quantity', value: 10, unit: 'Cel' }, '[degF]{difference}', 'at least', on, false)
        ?.middle,
    ).toBeCloseTo(18, 12);
    expect(
      readingOf({ is: 'quantity', value: 18, unit: '[degF]{difference}' }, '[degF]', 'at least', on, false),
    ).toBeUndefined();
  });

  test('another dimension, a phrase, and an unknown are no reading', () => {
    expect(readingOf({ is: 'quantity', value: 5, unit: 'A' }, 'V', 'at least', on, false)).toBeUndefined();
    expect(readingOf({ is: 'quantity', value: 10, unit: 'min' }, 'a', 'at most', on, false)).toBeUndefined();
    expect(readingOf({ is: 'text', text: 'plenty' }, 'V', 'at least', on, false)).toBeUndefined();
    expect(readingOf({ is: 'unknown', why: 'dark' }, 'V', 'at least', on, false)).toBeUndefined();
  });

  test('"none" is nothing under a ceiling, and says nothing of a floor', () => {
    expect(readingOf({ is: 'state', state: 'no' }, '[in_i]', 'at most', on, false)?.high).toBe(0);
    expect(readingOf({ is: 'state', state: 'no' }, 'V', 'at least', on, false)).toBeUndefined();
    expect(readingOf({ is: 'state', state: 'good' }, '[in_i]', 'at most', on, false)).toBeUndefined();
  });

  test('"about" is five percent unless a plus-or-minus was given, and one more or less of a count', () => {
    expect(readingOf({ is: 'quantity', value: 100, unit: '[psi]' }, '[psi]', 'at least', on, true)).toEqual({
      low: 95,
      middle: 100,
      high: 105,
    });
    expect(
      readingOf({ is: 'quantity', value: 100, unit: '[psi]', plusOrMinus: 1 }, '[psi]', 'at least', on, true),
    ).toEqual({ low: 99, middle: 100, high: 101 });
    expect(readingOf({ is: 'count', count: 2 }, '1', 'at most', on, true)).toEqual({
      low: 1,
      middle: 2,
      high: 3,
    });
  });
});

describe('a date read as an age', () => {
  const age = (text: string, today = on) => readingOf({ is: 'text', text }, 'a', 'at most', today, false);

  test('an anniversary is a whole number of years, also of a leap day', () => {
    expect(age('2016-11-24')).toEqual({ low: 10, middle: 10, high: 10 });
    expect(age('2016-11-25')!.high).toBeLessThan(10);
    expect(age('2016-02-29', day('2026-02-28'))!.high).toBe(10);
  });

  test('a month or a year alone is as wide as it is', () => {
    const month = age('2020-05')!;
    expect(month.high - month.low).toBeCloseTo(30 / 365, 2);
    const year = age('2020')!;
    expect(year.high - year.low).toBeCloseTo(1, 2);
    expect(year.low).toBeLessThan(6);
    expect(year.high).toBeGreaterThan(6.8);
  });

  test('a date to come, and no date, are no age', () => {
    expect(age('2027-11-24')).toBeUndefined();
    expect(age('last spring')).toBeUndefined();
    expect(age('2020-13')).toBeUndefined();
    expect(age('2020-02-30')).toBeUndefined();
  });
});
