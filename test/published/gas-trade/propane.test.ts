// Why: heat and hours from published properties of propane, worked out by somebody else.
// Tolerance: 0.005 h, their rounding.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../../../src/figured/answer-by-hand.ts';
import gas from '../data/lp-checks.json' with { type: 'json' };

describe(gas.source, () => {
  test('a tank of 30 gallons of water holds 24 gallons of gas and 2,196,048 Btu', () => {
    const { water_cap_gal, btu } = gas.rows.find((r) => r.kind === '80 pct fill')!;
    const days = answerByHand('lp-endurance', { capacity: water_cap_gal!, burner: 24_000, duty: 1 }).number!;
    expect(days * 24 * 24_000).toBeCloseTo(btu!, 3);
  });
  test('a 20 lb cylinder burns 10.77 h at 40,000 Btu an hour', () => {
    const { btu, hours_at_40000 } = gas.rows.find((r) => r.kind === '20 lb cylinder')!;
    const days = answerByHand('lp-endurance', { capacity: btu! / 91_502, fill: 1, burner: 40_000, duty: 1 })
      .number!;
    expect(days * 24).toBeCloseTo(hours_at_40000!, 2);
  });
});
