// Why: the law has four ways out, and a doubtful weight takes none of them.
import { describe, expect, test } from 'vitest';
import { day } from '../../units/day.ts';
import { answerByHand } from '../answer-by-hand.ts';

describe('odometer-disclosure', () => {
  test('16,000 lb exactly needs one; 16,001 does not', () => {
    expect(answerByHand('odometer-disclosure', { gvwr: 16_000, year: 2022 }).words).toBe('needed');
    expect(answerByHand('odometer-disclosure', { gvwr: 16_001, year: 2022 }).words).toBe('exempt');
  });
  test('16,000 give or take 500 is too close to call', () =>
    expect(
      answerByHand('odometer-disclosure', {
        gvwr: { value: 16_000, unit: '[lb_av]', plus_or_minus: 500 },
        year: 2022,
      }),
    ).toEqual({ refused: 'too close to call' }));
  test('an old one is exempt whatever it weighs; a new one must be weighed', () => {
    expect(answerByHand('odometer-disclosure', { year: 2006 }, day('2016-01-01')).words).toBe('exempt');
    expect(answerByHand('odometer-disclosure', { year: 2022 }).problems?.map((p) => p.name)).toEqual([
      'gvwr',
    ]);
    expect(answerByHand('odometer-disclosure', { gvwr: 12_000 }).problems?.map((p) => p.name)).toEqual([
      'year',
    ]);
  });
  test('a trailer is exempt', () =>
    expect(answerByHand('odometer-disclosure', { kind: 'fifth-wheel' }).words).toBe('exempt'));
});
