// Why: miles over years.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('miles-a-year', () => {
  test('54,480 mi over 10.9 years: 5,000 a year', () =>
    expect(answerByHand('miles-a-year', { total: 54_480, year: 2016 }).number).toBeCloseTo(5_000, -1));
  test('kilometers are miles at the door', () =>
    expect(
      answerByHand('miles-a-year', { total: { value: 54_480 * 1.609344, unit: 'km' }, year: 2016 }).number,
    ).toBeCloseTo(answerByHand('miles-a-year', { total: 54_480, year: 2016 }).number!, 6));
});
