// Why: load rows that were printed for tires, against the formula that stands in where there is no table.
// Tolerance: 1.2 percent of pressure, which is the 0.8 percent of load by which printed rows are stepped; 0.05 psi for sums.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../../../src/figured/answer-by-hand.ts';
import sums from '../data/tire-formula-checks.json' with { type: 'json' };
import row from '../data/tire-lt235-85r16.json' with { type: 'json' };
import points from '../data/tire-rating-points.json' with { type: 'json' };

const front = (load: number, rated: number, most: number): number =>
  answerByHand('front-tire-pressure', { axle: load * 2, rated_load: rated, rated_pressure: most }).number!;

describe(row.source, () => {
  test.each(row.rows)('$single_lb lb needs $psi psi', ({ single_lb, psi }) => {
    expect(Math.abs(front(single_lb, 3042, 80) / psi - 1)).toBeLessThan(0.012);
  });
  test.each(row.rows)('a pair with $dual_pair_lb lb needs $psi psi', ({ dual_pair_lb, psi }) => {
    const rear = answerByHand('rear-tire-pressure', {
      axle: dual_pair_lb * 2,
      rated_load: 2778,
      rated_pressure: 80,
    }).number!;
    expect(Math.abs(rear / psi - 1)).toBeLessThan(0.015);
  });
});

describe(sums.source, () => {
  test.each(sums.rows.filter((r) => r.need_lb !== undefined))(
    '$need_lb lb of $Lmax at $Pmax: $P psi',
    (r) => {
      expect(Math.abs(front(r.need_lb!, r.Lmax, r.Pmax) - r.P)).toBeLessThan(0.051);
    },
  );
});

describe(points.source, () => {
  test('two rating points of one tire lie on one curve: 5,980 lb at 105 and 6,175 at 110 psi', () => {
    const [high, low] = points.rows.filter((r) => r.size === '295/75R22.5' && r.lr === 'G');
    expect(
      Math.abs(front(low!.single_lb!, high!.single_lb!, high!.single_psi!) / low!.single_psi! - 1),
    ).toBeLessThan(0.01);
  });
});
