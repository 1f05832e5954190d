// Why: gas, heat and days.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('lp-endurance', () => {
  test('24.6 gal of water capacity: 51.5 h of furnace, 7.1 days at 30 percent', () => {
    const a = answerByHand('lp-endurance', { capacity: 24.6 });
    expect(a.number).toBeCloseTo(7.15, 2);
    expect(a.working?.join(' ')).toContain('51.5 h');
  });
  test('a burner that never runs has no days', () => {
    expect(answerByHand('lp-endurance', { capacity: 24.6, duty: 0 })).toEqual({
      refused: 'nothing to work with',
    });
  });
});
