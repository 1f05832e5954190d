// Why: a cent lost in rounding is a cent somebody disputes.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cents, dollars, showMoney } from './money.ts';

describe('cents', () => {
  test.each([
    [0.5, 1],
    [-0.5, -1],
    [1.4999, 1],
    [-1.4999, -1],
    [2.5, 3],
  ])('%d is %d: halves go away from zero', (n, whole) => {
    expect(cents(n)).toBe(whole);
  });
  test('are whole, within half a cent, the same on both sides of zero, and never minus nought', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (n) => {
        const c = cents(n);
        expect(Number.isInteger(c)).toBe(true);
        expect(Math.abs(c - n)).toBeLessThanOrEqual(0.5);
        expect(cents(-n)).toBe(-c + 0);
        expect(Object.is(c, -0)).toBe(false);
      }),
      { seed: 20261209 },
    );
  });
  test('dollars with cents come out to the cent', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (n) => {
        expect(dollars(n / 100)).toBe(n);
      }),
      { seed: 20261210 },
    );
  });
});

describe('showing', () => {
  test.each([
    [0, '$0'],
    [5, '$0.05'],
    [50, '$0.50'],
    [100, '$1'],
    [123_450, '$1,234.50'],
    [12_345_600, '$123,456'],
    [100_000_000, '$1,000,000'],
    [-99, '-$0.99'],
    [-123_456, '-$1,234.56'],
  ])('%d is %s', (n, text) => {
    expect(showMoney(cents(n))).toBe(text);
  });
  test('what is shown can be read back to the cent', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e10, max: 1e10 }), (n) => {
        expect(Math.round(Number(showMoney(cents(n)).replace(/[$,]/g, '')) * 100) + 0).toBe(n);
      }),
      { seed: 20261211 },
    );
  });
});
