// Why: a drop is a difference of temperatures, in whatever unit they were read.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('ac-split', () => {
  test('78 in, 58 out: 20 degrees difference', () =>
    expect(answerByHand('ac-split', { return: 78, supply: 58 })).toMatchObject({
      number: 20,
      unit: '[degF]{difference}',
    }));
  test('25.556 and 14.444 Celsius are the same 20 degrees', () => {
    expect(
      answerByHand('ac-split', {
        return: { value: 25.5556, unit: 'Cel' },
        supply: { value: 14.4444, unit: 'Cel' },
      }).number,
    ).toBeCloseTo(20, 3);
  });
  test('no colder out than in is said', () =>
    expect(answerByHand('ac-split', { return: 70, supply: 71 }).note).toContain('not cooling'));
  test('a plus-or-minus in kelvin travels as one', () => {
    const a = answerByHand('ac-split', {
      return: { value: 78, unit: '[degF]', plus_or_minus: 1 },
      supply: { value: 58, unit: '[degF]', plus_or_minus: 1 },
    });
    expect(a.half).toBeCloseTo(Math.SQRT2, 9);
  });
});
