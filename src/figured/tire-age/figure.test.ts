// Why: an age that is off by a decade kills; the code is read strictly.
import { describe, expect, test } from 'vitest';
import { day } from '../../units/day.ts';
import { answerByHand } from '../answer-by-hand.ts';
import { readTireCode } from './read-code.ts';

describe('tire-age', () => {
  test('2319 on 24 November 2026: week of 9 June 2019, 7.46 years, a week either way', () => {
    const a = answerByHand('tire-age', { code: '2319' });
    expect(a.number).toBeCloseTo(7.46, 2);
    expect(a.half).toBeCloseTo(7 / 365.25, 9);
    expect(a.working?.[0]).toContain('2019-06-09');
  });
  test.each(['DOT 1ABC DEF 2319', '1abc-def-2319', '1ABCDEF2319'])(
    '%s is read like its last four',
    (code) => {
      expect(answerByHand('tire-age', { code }).number).toBe(
        answerByHand('tire-age', { code: '2319' }).number,
      );
    },
  );
  test.each([
    ['0019', 'no such week'],
    ['5419', 'no such week'],
    ['5319', 'no such week'],
    ['5026', 'made in the future'],
    ['DOT ABCD', 'no date code'],
    ['12', 'no date code'],
  ])('%s is refused: %s', (code, why) => {
    expect(answerByHand('tire-age', { code })).toEqual({ refused: why });
  });
  test('three digits are at least so old', () => {
    const a = answerByHand('tire-age', { code: '408' });
    expect(a.number).toBeGreaterThan(26);
    expect(a.note).toContain('At least');
  });
  test('a week that has begun is not the future', () => {
    expect(readTireCode('4726', day('2026-11-22'))).toMatchObject({ starts: '2026-11-22' });
    expect(readTireCode('4726', day('2026-11-21'))).toMatchObject({ refused: 'made in the future' });
  });
});
