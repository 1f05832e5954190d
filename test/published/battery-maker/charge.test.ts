// Why: a battery maker's table of resting voltage, and textbook sums after Peukert, against our figures.
// Tolerance: rows of the table exact; 0.05 percent and 0.0005 h where the others rounded.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../../../src/figured/answer-by-hand.ts';
import sums from '../data/electrical-checks.json' with { type: 'json' };
import table from '../data/lead-acid-ocv.json' with { type: 'json' };

describe(table.source, () => {
  test.each(table.rows)('$volts V: $soc percent', ({ volts, soc }) => {
    expect(answerByHand('battery-charge', { volts, chemistry: 'flooded' }).number).toBeCloseTo(soc, 9);
  });
});

describe(sums.source, () => {
  test.each(sums.rows.filter((r) => r.kind === 'ocv interpolate'))(
    '$volts V lies at $soc percent',
    ({ volts, soc }) => {
      expect(answerByHand('battery-charge', { volts: volts!, chemistry: 'flooded' }).number).toBeCloseTo(
        soc!,
        1,
      );
    },
  );
  test.each(sums.rows.filter((r) => r.kind.startsWith('peukert')))(
    '$C Ah over $H h, exponent $n, $I A: $h h',
    ({ C, H, n, I, h }) => {
      const volts = 12;
      const a = answerByHand('battery-hours', {
        count: 1,
        each: C!,
        chemistry: 'flooded',
        usable: 1,
        volts,
        peukert: n!,
        rated_over: H!,
        load: I! * volts,
        efficiency: 1,
        idle: 0,
      });
      expect(Math.abs(a.number! - h!)).toBeLessThan(0.00051);
    },
  );
  test.each(sums.rows.filter((r) => r.kind === 'service VA'))(
    'a site of $amps A gives $va VA',
    ({ amps, va }) => {
      expect(answerByHand('shore-load', { amps: amps!, share: 1 }).number).toBeCloseTo(va!, 9);
    },
  );
});
