// Why: a number somebody said is never exact; this decides how far off it may be when no plus-or-minus came with it.
import { digitDoubt } from '../known/digit-doubt.ts';
import type { Fact } from '../known/facts.ts';
import type { Value } from '../said/entry.ts';
import { hedgedDoubt } from '../standards/house/reading-doubt.ts';
import { hedgedCount, spokenTemperature, unsureDoubt } from '../standards/house/said-loosely.ts';
import { type Limit, limitOn } from '../standards/standard.ts';
import type { Day } from '../units/day.ts';
import { type Unit, unitFact } from '../units/unit.ts';

/** Parts that are plates, labels and papers: what is read off them is taken as printed. */
const plates = new Set(['vin_plate', 'cert_label', 'chassis_label', 'cargo_label']);

/** True for a part that is a plate or a label of the unit. */
export const isPlate = (part: string): boolean => plates.has(part);

function halfWidth(value: number, unit: Unit, percent: Limit, on: Day): number {
  const fact = unitFact(unit);
  if (fact.dimension === 'temperature') return limitOn(spokenTemperature, on).value / fact.factor;
  return (Math.abs(value) * limitOn(percent, on).value) / 100;
}

/**
 * The half width of a number, in `unit`, which is the unit it stands in.
 * As stated when it was stated; else by how it was said: house defaults of standards/house, and half of the last digit of
 * what was spoken plainly, as the record itself takes it.
 */
export function doubtOf(value: Value, unit: Unit, fact: Fact | undefined, on: Day): number {
  if (value.is === 'count') return fact?.doubts.includes('hedged') ? limitOn(hedgedCount, on).value : 0;
  if (value.is !== 'quantity') return 0;
  if (value.plusOrMinus !== undefined) return value.plusOrMinus;
  if (fact === undefined || fact.figure !== undefined) return 0;
  if (fact.doubts.includes('unsure')) return halfWidth(value.value, unit, unsureDoubt, on);
  if (fact.doubts.includes('hedged')) return halfWidth(value.value, unit, hedgedDoubt, on);
  if (isPlate(fact.part) || fact.evidence[0]?.source.from !== 'speech') return 0;
  if (unitFact(unit).dimension === 'temperature')
    return limitOn(spokenTemperature, on).value / unitFact(unit).factor;
  return digitDoubt(value.value);
}
