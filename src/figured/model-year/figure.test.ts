// Why: the year is only ever narrowed by what proves something.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

const heavy = { vin: '1ZZAB1CD4A0012345', gvwr: 26_000, kind: 'class-a-diesel' };
describe('model-year', () => {
  test('a heavy chassis leaves both years; the label settles it', () => {
    expect(answerByHand('model-year', heavy).words).toBe('1980 or 2010');
    expect(answerByHand('model-year', { ...heavy, label: '2010' }).words).toBe('2010');
    expect(answerByHand('model-year', { ...heavy, label: '2006' })).toMatchObject({
      words: '1980 or 2010',
      note: expect.stringContaining('2006'),
    });
  });
  test('position 7 counts up to exactly 10,000 lb', () => {
    const at = (gvwr: number, vin = heavy.vin) =>
      answerByHand('model-year', { vin, gvwr, kind: 'class-b' }).words;
    expect(at(10_000)).toBe('2010');
    expect(at(10_001)).toBe('1980 or 2010');
    expect(at(10_000, '1ZZAB12D2A0012345')).toBe('1980');
  });
  test('a weight rating that may be on either side of the line settles nothing', () => {
    const a = answerByHand('model-year', {
      ...heavy,
      kind: 'class-b',
      gvwr: { value: 9_900, unit: '[lb_av]', plus_or_minus: 500 },
    });
    expect(a).toEqual({ refused: 'too close to call' });
  });
  test('a trailer proves nothing by position 7; a year that has not come is out', () => {
    expect(answerByHand('model-year', { ...heavy, gvwr: 9_000, kind: 'travel-trailer' }).words).toBe(
      '1980 or 2010',
    );
    expect(answerByHand('model-year', { vin: '11111111161111111' }).words).toBe('2006');
  });
  test('no code, no year; a failed check digit is said', () => {
    expect(answerByHand('model-year', { vin: '1ZZAB1CD4U0012345' })).toEqual({
      refused: 'no model year code',
    });
    expect(answerByHand('model-year', { ...heavy, vin: '1ZZAB1CD4A0012346' }).note).toContain('check digit');
  });
});
