// Why: sound falls with distance, and walls make it doubtful.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('noise-at-50-feet', () => {
  test('68 dB(A) at 23 ft is 61.3 at 50', () =>
    expect(answerByHand('noise-at-50-feet', { level: 68, distance: 23 }).number).toBeCloseTo(61.3, 1));
  test('measured at 50 ft it is itself, still 3 dB doubtful', () =>
    expect(answerByHand('noise-at-50-feet', { level: 60, distance: 50 })).toMatchObject({
      number: 60,
      half: 3,
    }));
});
