// Why: the tightest axle speaks.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

const coach = { gawr_front: 14_600, front: 14_100, gawr_rear: 23_000, rear: 21_900 };
describe('axle-room', () => {
  test('500 lb on the front axle', () =>
    expect(answerByHand('axle-room', coach)).toMatchObject({ number: 500, binds: 'front axle' }));
  test('an axle over its rating is less than nothing', () =>
    expect(answerByHand('axle-room', { ...coach, rear: 23_200 })).toMatchObject({
      number: -200,
      binds: 'rear axle',
    }));
  test('a tag axle counts when weighed and is missed when not', () => {
    expect(answerByHand('axle-room', { ...coach, gawr_tag: 10_000, tag: 9_900 })).toMatchObject({
      number: 100,
      binds: 'tag axle',
    });
    expect(answerByHand('axle-room', { ...coach, gawr_tag: 10_000 }).note).toContain('tag axle');
  });
});
