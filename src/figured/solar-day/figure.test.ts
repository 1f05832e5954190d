// Why: a label is not a day.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('solar-day', () => {
  test('400 W, 4 h, 0.675: 1,080 Wh, half of it doubtful', () => {
    const a = answerByHand('solar-day', { watts: 400 });
    expect(a.number).toBeCloseTo(1_080, 6);
    expect(a.half).toBeGreaterThan(500);
  });
});
