// Why: tank, reserve and economy.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('fuel-range', () => {
  test('100 gal, 8 mpg, an eighth kept: 700 mi', () =>
    expect(answerByHand('fuel-range', { tank: 100, economy: 8 })).toMatchObject({
      number: 700,
      unit: '[mi_i]',
    }));
  test('of no known kind the economy is asked for', () =>
    expect(answerByHand('fuel-range', { tank: 100 }).problems?.map((p) => p.name)).toEqual(['economy']));
});
