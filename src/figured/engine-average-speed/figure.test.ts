// Why: miles for each hour.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('engine-average-speed', () => {
  test('45,000 mi in 1,500 h: 30 mph', () =>
    expect(answerByHand('engine-average-speed', { miles: 45_000, hours: 1_500 })).toMatchObject({
      number: 30,
      unit: '[mi_i]/h',
    }));
  test('no hours, no average', () =>
    expect(answerByHand('engine-average-speed', { miles: 45_000, hours: 0 })).toEqual({
      refused: 'no engine hours',
    }));
});
