// Why: an estimate says it is one, and an overloaded tire gets no pressure.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';
import { figureCardOf } from '../index.ts';

const sidewall = { rated_load: 6_610, rated_pressure: 120 };
describe('front-tire-pressure', () => {
  test('5,400 lb on a tire rated 6,610 at 120: 89.9 psi, shown as 90, marked an estimate', () => {
    const a = answerByHand('front-tire-pressure', { ...sidewall, axle: 10_800 });
    expect(a.number).toBeCloseTo(89.9, 1);
    expect(a.note).toMatch(/^ESTIMATE/);
    expect(figureCardOf('front-tire-pressure')!.round!({ value: a.number!, unit: '[psi]' }).value).toBe(90);
  });
  test('the heavier side decides where it was weighed', () =>
    expect(
      answerByHand('front-tire-pressure', { ...sidewall, axle: 10_800, corner: 5_800 }).number,
    ).toBeGreaterThan(95));
  test('more than the tire may carry is refused', () =>
    expect(answerByHand('front-tire-pressure', { ...sidewall, axle: 13_300 })).toEqual({
      refused: 'more load than the tire may carry',
    }));
  test('not weighed, no pressure', () =>
    expect(answerByHand('front-tire-pressure', sidewall).problems?.map((p) => p.name)).toEqual(['axle']));
});
