// Why: what makers of generators work out for altitude, each by their own rule, against our reading of the rules.
// Tolerance: 0.0005, except rule C, whose printed 0.93 is its rule exactly. Row D is from memory and left out. Rule B's rows on temperature are of a rule we do not use.
import { describe, expect, test } from 'vitest';
import { shareAt } from '../../../src/figured/generator-altitude/figure.ts';
import { altitudeRules } from '../../../src/standards/trade-practice/generator-derate.ts';
import rows from '../data/generator-derate.json' with { type: 'json' };

const [, a, b, c] = altitudeRules.rows;
const feet = (m: number): number => m / 0.3048;
describe(rows.source, () => {
  test('rule A: 5,500 W at 5,000 ft leaves 4,675 W', () => {
    const r = rows.rows.find((x) => x.rule === 'A')!;
    expect(r.rated_w! * shareAt(r.alt_ft!, a!)).toBeCloseTo(r.w!, 6);
  });
  test.each(rows.rows.filter((r) => r.rule === 'B' && r.alt_m !== undefined))(
    'rule B at $alt_m m: $factor',
    (r) => {
      expect(shareAt(feet(r.alt_m!), b!)).toBeCloseTo(r.factor!, 3);
    },
  );
  test('rule C at 2,100 m: 0.93', () => {
    const r = rows.rows.find((x) => x.rule === 'C')!;
    expect(shareAt(feet(r.alt_m!), c!)).toBeCloseTo(r.factor!, 3);
  });
});
