// Why: a measured stop, carried to the highway, and nothing without one.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

const driver = { reaction: 1.5, kept: 1, speed: 60 };
describe('stopping-distance', () => {
  test('60 mph, 1.5 s, 14 ft/s2: 409 ft; down 6 percent: 453 ft', () => {
    expect(answerByHand('stopping-distance', { ...driver, deceleration: 14 }).number).toBeCloseTo(409, 0);
    expect(answerByHand('stopping-distance', { ...driver, deceleration: 14, grade: 6 }).number).toBeCloseTo(
      453,
      0,
    );
  });
  test('a stop of 30.73 ft from 20 mph is 14 ft/s2', () => {
    expect(answerByHand('stopping-distance', { ...driver, stop: 30.73 }).number).toBeCloseTo(409, 0);
  });
  test('nothing measured, nothing said', () =>
    expect(answerByHand('stopping-distance', driver).problems?.map((p) => p.name)).toEqual(['stop']));
  test('a grade that the brakes cannot hold is refused', () =>
    expect(answerByHand('stopping-distance', { ...driver, deceleration: 2, grade: 10 })).toEqual({
      refused: 'would not stop on this grade',
    }));
});
