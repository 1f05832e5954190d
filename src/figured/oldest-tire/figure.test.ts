// Why: the oldest one is the headline; unread ones are never taken as younger.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('oldest-tire', () => {
  test('by hand it is what it is given', () => {
    expect(
      answerByHand('oldest-tire', {
        oldest: { value: 120, unit: 'mo', plus_or_minus: 1 },
        where: 'left front',
        dated: 2,
        undated: 0,
      }),
    ).toMatchObject({ number: 10, unit: 'a', binds: 'left front' });
  });
  test('tires without a date are said', () => {
    expect(answerByHand('oldest-tire', { oldest: 7, dated: 4, undated: 2 }).note).toContain('2 more');
  });
});
