// Why: the least of all limits binds and is named.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

const coach = { gcwr: 46_000, weight: 35_900, receiver: 10_000, ball: 8_000, chassis: 5_000 };
describe('tow-limit', () => {
  test('10,100, 10,000, 8,000 and 5,000: the chassis binds', () => {
    expect(answerByHand('tow-limit', coach)).toMatchObject({ number: 5_000, binds: "chassis maker's limit" });
  });
  test.each([
    ['ball', 8_000, { chassis: 9_000 }],
    ['receiver', 10_000, { chassis: 20_000, ball: 20_000 }],
    ['combination rating less the loaded coach', 9_000, { chassis: 20_000, ball: 20_000, weight: 37_000 }],
    ['tow bar', 4_000, { bar: 4_000 }],
  ] as const)('%s binds at %i', (binds, number, more) => {
    expect(answerByHand('tow-limit', { ...coach, ...more })).toMatchObject({ binds, number });
  });
  test('the tongue: 500 lb over an eighth is 4,000', () => {
    expect(answerByHand('tow-limit', { ...coach, tongue: 500 })).toMatchObject({
      number: 4_000,
      note: expect.stringContaining('own wheels the least is 5000 lb'),
    });
  });
  test('an overloaded coach tows nothing; what was not read is said', () => {
    const a = answerByHand('tow-limit', { ...coach, weight: 47_000 });
    expect(a.number).toBe(0);
    expect(a.note).toContain('tow bar');
  });
  test('without the receiver there is no limit to state', () => {
    expect(answerByHand('tow-limit', { gcwr: 46_000, weight: 35_900 }).problems?.map((p) => p.name)).toEqual([
      'receiver',
    ]);
  });
});
