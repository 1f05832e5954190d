// Why: the rule that is used is shown, with how far other makers are from it.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('generator-altitude', () => {
  test('8 kW at 6,000 ft and 105 F: 6.34 kW', () => {
    expect(
      answerByHand('generator-altitude', { rated: 8, altitude: 6_000, temperature: 105 }).number,
    ).toBeCloseTo(6.34, 2);
  });
  test('no gain below the line', () => {
    expect(answerByHand('generator-altitude', { rated: 8, altitude: 0, temperature: 50 })).toMatchObject({
      number: 8,
      half: 0,
    });
  });
  test('makers disagree, and that is in the plus-or-minus', () => {
    expect(answerByHand('generator-altitude', { rated: 8, altitude: 6_000 }).half).toBeGreaterThan(0.4);
  });
});
