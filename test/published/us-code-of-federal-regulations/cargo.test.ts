// Why: cargo sums by the federal label and the way to the old one, worked out by somebody else.
// Tolerance: 0.05 lb, their rounding.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../../../src/figured/answer-by-hand.ts';
import cargo from '../data/cargo-checks.json' with { type: 'json' };

const row = (kind: string) => cargo.rows.find((r) => r.kind === kind)!;
describe(cargo.source, () => {
  test('water by the label: 100 and 50 gallons', () => {
    for (const { gal, lb } of cargo.rows.filter((r) => r.kind === 'water'))
      expect(answerByHand('cargo-left', { occc: 1_000, people: 0, fresh: gal! }).number).toBeCloseTo(
        1_000 - lb!,
        1,
      );
  });
  test('what is left of the label after people, water and tongue', () => {
    const { occc, people_lb, water_gal, tongue_lb, left_lb } = row('remaining_for_cargo');
    expect(
      answerByHand('cargo-left', {
        occc: occc!,
        people: people_lb! / 150,
        person: 150,
        fresh: water_gal!,
        tongue: tongue_lb!,
      }).number,
    ).toBeCloseTo(left_lb!, 1);
  });
  test('the label itself is rating less unloaded weight with full propane', () => {
    const { gvwr, uvw_full_propane, occc_lb } = row('new_occc');
    expect(
      answerByHand('cargo-left', { gvwr: gvwr!, scale: uvw_full_propane!, people: 0, people_weighed: 0 })
        .number,
    ).toBeCloseTo(occc_lb!, 6);
  });
  test('an old capacity is never taken for a new one', () => {
    const { ccc_lb } = row('old_ccc');
    expect(answerByHand('cargo-left', { occc: ccc_lb!, people: 0, made: '2004-03' })).toHaveProperty(
      'problems',
    );
  });
});
