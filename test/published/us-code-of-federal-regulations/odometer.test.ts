// Why: cases of 49 CFR 580.17; the two turning days are the rule's own.
// Tolerance: none.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../../../src/figured/answer-by-hand.ts';
import { day } from '../../../src/units/day.ts';
import law from '../data/used-car-rule.json' with { type: 'json' };

describe('49 CFR 580.17', () => {
  test.each(law.rows.filter((r) => r.kind === 'odometer'))(
    'model year $my on $transfer, $gvwr lb: exempt $exempt',
    (r) => {
      const given = {
        year: r.my!,
        ...(r.gvwr === undefined ? {} : { gvwr: r.gvwr }),
        ...(r.self_propelled === false ? { kind: 'travel-trailer' } : { kind: 'class-c' }),
      };
      expect(answerByHand('odometer-disclosure', given, day(r.transfer!)).words).toBe(
        r.exempt ? 'exempt' : 'needed',
      );
    },
  );
});
