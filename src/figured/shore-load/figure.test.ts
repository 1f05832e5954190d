// Why: thirty amperes are one leg, fifty are two.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('shore-load', () => {
  test.each([
    [30, 2_880, '3600 VA'],
    [50, 9_600, '12,000 VA'],
    [20, 1_920, '2400 VA'],
  ])('%i A carries %i VA for hours', (amps, steady, most) => {
    const a = answerByHand('shore-load', { amps });
    expect(a.number).toBeCloseTo(steady, 9);
    expect(a.working?.[0]).toContain(most);
  });
  test('"about fifty" is fifty, and forty is no cord', () => {
    expect(answerByHand('shore-load', { amps: { value: 50, unit: 'A', plus_or_minus: 2.5 } })).toMatchObject({
      number: 9_600,
      half: 0,
    });
    expect(answerByHand('shore-load', { amps: 40 })).toEqual({ refused: 'no standard rating' });
  });
});
