// Why: what the trade's pages say of volts, cold, wood and cool air, beside the limits we took from them.
// Tolerance: 0.05 V, because the trade rounds the printed 12.65 V and 12.24 V to 12.6 V and 12.2 V.
import { expect, test } from 'vitest';
import { coldBox, coldFreezer } from '../../../src/standards/food-and-drug-administration/cold-food.ts';
import { type Limit, limitOn } from '../../../src/standards/standard.ts';
import { restFull, restHalf } from '../../../src/standards/trade-practice/battery-voltages.ts';
import { splitGood, tapHot, tapScald } from '../../../src/standards/trade-practice/house-systems.ts';
import { woodRot } from '../../../src/standards/trade-practice/wood-moisture.ts';
import { proofDay } from '../../facts-from-list.ts';
import volts from '../data/lead-acid-ocv.json' with { type: 'json' };
import bands from '../data/practice-bands.json' with { type: 'json' };

const value = (limit: Limit): number => limitOn(limit, proofDay).value;
const band = (topic: string) => bands.rows.find((r) => r.topic === topic);

test('a lead-acid battery at rest, full and half', () => {
  const at = (soc: number) => volts.rows.find((r) => r.soc === soc)!.volts;
  expect(Math.abs(value(restFull) - at(100))).toBeLessThanOrEqual(0.05 + 1e-9);
  expect(Math.abs(value(restHalf) - at(50))).toBeLessThanOrEqual(0.05 + 1e-9);
  // Never above the printed voltage: a battery that the page calls full is not called low here.
  expect(value(restFull)).toBeLessThanOrEqual(at(100));
});

test('cold food, rotting wood, cool air, scalding water', () => {
  expect(value(coldBox)).toBe(band('refrigerator max F')?.v);
  expect(value(coldFreezer)).toBe(band('freezer F')?.v);
  expect(value(woodRot)).toBe(band('wood moisture')?.rot_from_pct);
  expect(value(splitGood)).toBe(band('rooftop A/C supply-return split F')?.lo);
  const scald = (band('hot water scald')?.rows ?? []).map((r) => r[0]);
  expect(scald).toContain(value(tapHot));
  expect(scald).toContain(value(tapScald));
});
