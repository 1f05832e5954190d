// Why: an evening reading must not move to the next day because somebody's clock was turned to another zone.
import { describe, expect, test } from 'vitest';
import { addSeconds, isInstant, readWhen } from './read-when.ts';

const began = '2026-11-20T22:55:00-06:00';

describe('when', () => {
  test.each([
    ['2026-11-20T23:02:00-06:00', '2026-11-20T23:02:00-06:00'],
    ['2026-11-20 23:02:00-06:00', '2026-11-20T23:02:00-06:00'],
    ['12:41', '2026-11-20T23:07:41.000-06:00'],
    ['1:02:03.5', '2026-11-20T23:57:03.500-06:00'],
    ['1:06:00', '2026-11-21T00:01:00.000-06:00'],
  ])('%s is %s', (cell, at) => {
    expect(readWhen(cell, began)).toBe(at);
    expect(isInstant(at)).toBe(true);
  });
  test.each([
    '2026-11-20T23:02:00',
    '2026-02-30T10:00:00Z',
    '2026-11-20',
    'yesterday',
    '12',
    '2026-11-20T25:00:00Z',
    '',
  ])('"%s" is no time', (cell) => {
    expect(readWhen(cell, began)).toBeUndefined();
  });
  test('adding keeps the instant', () => {
    expect(Date.parse(addSeconds(began, 4000.25))).toBe(Date.parse(began) + 4_000_250);
    expect(addSeconds('2026-01-01T00:00:00Z', 1)).toBe('2026-01-01T00:00:01.000Z');
  });
});
