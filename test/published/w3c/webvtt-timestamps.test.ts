// Why: which texts are WebVTT timestamps is not ours to say: W3C WebVTT 1, section 4.3 (rules read, cases made from them).
import { describe, expect, test } from 'vitest';
import { readVttTimestamp } from '../../../src/said/transcript/timestamp.ts';

const valid: readonly (readonly [text: string, seconds: number])[] = [
  ['00:00.000', 0],
  ['00:00:01.500', 1.5],
  ['01:02:03.004', 3723.004],
  ['59:59.999', 3599.999],
  ['100:00:00.000', 360_000],
];
const refused = [
  '60:00.000',
  '00:60.000',
  '00:00:01,500',
  '1:02.000',
  '00:01.5',
  '00:00:60.000',
  '00:60:00.000',
  '',
  'x',
];

describe('WebVTT timestamps', () => {
  test.each(valid)('%s is %d seconds', (text, seconds) => {
    expect(readVttTimestamp(text)).toBeCloseTo(seconds, 6);
  });
  test.each(refused)('%j is refused', (text) => {
    expect(readVttTimestamp(text)).toBeUndefined();
  });
  test('one digit of hours is not valid to write, but the parser of the standard takes it, and so do we', () => {
    expect(readVttTimestamp('1:00:00.000')).toBe(3600);
  });
});
