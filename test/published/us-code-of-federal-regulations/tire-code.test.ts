// Why: the weeks of 49 CFR 574.5: its own example, and rows worked out by its rule by somebody else.
// Tolerance: none; a week is exact.
import { describe, expect, test } from 'vitest';
import { readTireCode } from '../../../src/figured/tire-age/read-code.ts';
import { day } from '../../../src/units/day.ts';
import tins from '../data/tin-dates.json' with { type: 'json' };

describe(tins.source, () => {
  test.each(tins.rows.filter((r) => r.week_starts !== null))(
    '$code ($from)',
    ({ code, week_starts, week_ends }) => {
      expect(readTireCode(code, day('2026-11-24'))).toEqual({
        starts: week_starts,
        ends: week_ends,
        atLeast: false,
      });
    },
  );
  test('three digits: week 40 of a year ending in 8, at the latest 1998', () => {
    expect(readTireCode('408', day('2026-11-24'))).toMatchObject({
      atLeast: true,
      starts: expect.stringMatching(/^1998/),
    });
  });
});
