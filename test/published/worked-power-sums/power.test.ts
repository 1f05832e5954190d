// Why: horsepower from torque and speed; the inputs stand on a published page, the answers were worked out again beside it.
// Tolerance: 0.005 hp, their rounding.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../../../src/figured/answer-by-hand.ts';
import sums from '../data/dynamics-checks.json' with { type: 'json' };

describe(sums.source, () => {
  test.each(sums.rows)('$torque_lbft lb.ft at $rpm rpm: $hp hp', ({ torque_lbft, rpm, hp }) => {
    expect(answerByHand('engine-power', { torque: torque_lbft, speed: rpm }).number).toBeCloseTo(hp, 2);
  });
});
