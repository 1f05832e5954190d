// Why: VINs and model years that the regulation and others worked out, against ours.
// Tolerance: none; a check character and a year are exact.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../../../src/figured/answer-by-hand.ts';
import { sumVin } from '../../../src/figured/vin-check/read-vin.ts';
import {
  vinValues,
  vinWeights,
} from '../../../src/standards/us-code-of-federal-regulations/49-cfr-565-15-vin.ts';
import vins from '../data/vin-examples.json' with { type: 'json' };
import years from '../data/vin-year-codes.json' with { type: 'json' };

describe(vins.source, () => {
  test.each(vins.rows)('$vin ($from): sum $sum, check $check', ({ vin, sum, check, valid }) => {
    expect(sumVin(vin)).toMatchObject({ sum, expected: check, passes: valid });
    expect(answerByHand('vin-check', { vin }).words).toBe(valid ? 'passes' : 'fails');
  });
  test('33 characters have a value and position 9 has no weight', () => {
    expect(vinValues.rows.length).toBe(33);
    expect(vinWeights.rows[8]).toBe(0);
  });
});

describe(years.source, () => {
  test.each(years.rows)('code $code', ({ code, years: [earlier, later] }) => {
    const vin = `11111111?${code}1111111`.replace('?', '1');
    const far = answerByHand('model-year', { vin, gvwr: 26_000, kind: 'class-a-diesel' });
    expect(far.words).toBe(later! <= 2027 ? `${earlier} or ${later}` : String(earlier));
    const light = (seven: string) =>
      answerByHand('model-year', {
        vin: vin.slice(0, 6) + seven + vin.slice(7),
        gvwr: 9_500,
        kind: 'class-c',
      }).words;
    expect(light('4')).toBe(String(earlier));
    if (later! <= 2027) expect(light('D')).toBe(String(later));
  });
});
