// Why: duals share the axle by four, by the dual rating.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('rear-tire-pressure', () => {
  test('18,400 lb on four tires rated 5,840 at 105: 74.7 psi', () =>
    expect(
      answerByHand('rear-tire-pressure', { axle: 18_400, rated_load: 5_840, rated_pressure: 105 }).number,
    ).toBeCloseTo(74.7, 1));
  test('two tires carry twice as much each', () =>
    expect(
      answerByHand('rear-tire-pressure', { axle: 18_400, tires: 2, rated_load: 5_840, rated_pressure: 105 }),
    ).toEqual({ refused: 'more load than the tire may carry' }));
});
