// Why: hours over years, with half a year of doubt.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('generator-hours-a-year', () => {
  test('1,090 h over 10.9 years is 100 a year, give or take 4.6', () => {
    const a = answerByHand('generator-hours-a-year', { total: 1_090, year: 2016 });
    expect(a.number).toBeCloseTo(100.1, 0);
    expect(a.half).toBeCloseTo(4.6, 1);
  });
  test("this year's coach has no average yet", () =>
    expect(answerByHand('generator-hours-a-year', { total: 40, year: 2026 })).toEqual({
      refused: 'less than a year old',
    }));
  test('half a year is no model year', () =>
    expect(answerByHand('generator-hours-a-year', { total: 40, year: 2015.5 })).toEqual({
      refused: 'no such model year',
    }));
});
