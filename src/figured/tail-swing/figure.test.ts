// Why: the tail goes out by the geometry.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('tail-swing', () => {
  test('35 ft, wheelbase 22.5, 8.5 wide, 11.5 ft behind the axle: 2.06 ft', () =>
    expect(
      answerByHand('tail-swing', { radius: 35, wheelbase: 22.5, width: 8.5, overhang: 11.5 }).number,
    ).toBeCloseTo(2.06, 2));
  test('no turn tighter than the wheelbase', () =>
    expect(answerByHand('tail-swing', { radius: 20, wheelbase: 22, width: 8.5, overhang: 10 })).toEqual({
      refused: 'wheelbase longer than the turn',
    }));
});
