// Why: three tanks, one of them ends the stay.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('water-days', () => {
  const coach = { fresh: 90, gray: 60, black: 40, people: 2, fresh_use: 8, gray_use: 7, black_use: 2.2 };
  test('90, 60 and 40 gallons, two people: 4.3 days, gray ends it', () => {
    const a = answerByHand('water-days', coach);
    expect(a).toMatchObject({ binds: 'gray', unit: 'd' });
    expect(a.number).toBeCloseTo(4.29, 2);
    expect(a.working).toEqual(['fresh: 5.6 days', 'gray: 4.3 days', 'black: 9.1 days']);
  });
  test('nobody uses nothing', () =>
    expect(answerByHand('water-days', { ...coach, people: 0 })).toEqual({ refused: 'nothing to work with' }));
});
