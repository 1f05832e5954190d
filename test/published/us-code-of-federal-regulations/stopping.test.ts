// Why: distances and decelerations that 49 CFR 393.52 and 571.121 print, against our formula.
// Tolerance: 0.005 ft or ft/s2 (their rounding). The printed columns 17 and 21 ft/s2 do not give the printed 25 and 20 ft:
// the regulation rounded them apart, so one is never derived from the other.
import { describe, expect, test } from 'vitest';
import { stopIn } from '../../../src/figured/stopping-distance/figure.ts';
import stops from '../data/stopping-checks.json' with { type: 'json' };

const feetASecond = (mph: number): number => (mph * 5280) / 3600;
describe(stops.source, () => {
  test.each(stops.rows.filter((r) => r.kind === 'ideal distance'))(
    '$mph mph at $decel ft/s2: $ft ft',
    ({ mph, decel, ft }) => {
      expect(Math.abs(stopIn(feetASecond(mph!), 0, decel!, 0) - ft!)).toBeLessThan(0.0051);
    },
  );
  test.each(stops.rows.filter((r) => r.kind === 'mean decel'))(
    '$mph mph in $ft ft is $decel ft/s2',
    ({ mph, decel, ft }) => {
      expect(stopIn(feetASecond(mph!), 0, decel!, 0)).toBeCloseTo(ft!, 0);
    },
  );
});
