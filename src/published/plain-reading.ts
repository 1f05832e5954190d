// Why: a reading beside its limit is said as a person says it: "7.5 years old, against at most 7 years (trade practice)".
import type { AppliedLimit, Finding } from '../judged/finding.ts';
import type { Fact } from '../known/facts.ts';
import { isSameDimension } from '../units/quantity.ts';
import { plainLimit } from './plain-limit.ts';
import { readingOf } from './plain-near.ts';
import { aspectName, factWords } from './plain-subject.ts';
import { plainQuantity } from './plain-value.ts';

/** Aspects whose reading is said in another way than "name number". */
const said: Readonly<Record<string, (value: string) => string>> = {
  age: (v) => `${v} old`,
  pressure_cold: (v) => `${v} cold`,
  tread_mid: (v) => `${v} of tread in the middle`,
  tread_outer: (v) => `${v} of tread outside`,
  tread_inner: (v) => `${v} of tread inside`,
  lining: (v) => `${v} of lining`,
  longest_crack: (v) => `longest crack ${v}`,
};

const named = (fact: Pick<Fact, 'part' | 'aspect'>, value: string): string =>
  said[fact.aspect]?.(value) ?? `${aspectName(fact.part, fact.aspect)} ${value}`;

/** "7.5 years old", "moisture 24 ± 2 %", "5 mm (0.2 in) of lining": with the limit's unit behind a reading that was taken in another. */
export function readingWords(f: Finding): string {
  const fact = f.fact;
  if (fact === undefined) return '';
  if (fact.value.is !== 'quantity') return factWords(fact);
  const { value, unit, plusOrMinus, upTo } = fact.value;
  const own = plainQuantity(value, unit, plusOrMinus, upTo);
  const limitUnit = f.limit?.unit;
  if (limitUnit === undefined || limitUnit === unit || !isSameDimension(unit, limitUnit))
    return named(fact, own);
  const r = readingOf(f);
  return named(
    fact,
    r === undefined ? own : `${own} (${plainQuantity(Number(r.value.toPrecision(2)), limitUnit)})`,
  );
}

/** One reading for several places: "7.5 to 7.6 years old". Undefined where they cannot be told as one. */
export function rangeWords(all: readonly Finding[]): string | undefined {
  const values = all.map((f) => f.fact?.value);
  const [first] = values;
  const fact = all[0]?.fact;
  if (fact === undefined || first?.is !== 'quantity') return undefined;
  const numbers = values.flatMap((v) =>
    v?.is === 'quantity' && v.unit === first.unit && v.upTo === undefined ? [v] : [],
  );
  const isShown = numbers.some((v) => plainQuantity(v.value, v.unit, v.plusOrMinus).includes('±'));
  if (numbers.length !== values.length || isShown) return undefined;
  const sorted = numbers.map((v) => v.value).toSorted((a, b) => a - b);
  const [low = first.value, high = first.value] = [sorted[0], sorted.at(-1)];
  return named(fact, plainQuantity(low, first.unit, undefined, high));
}

/**
 * "against at least 2/32 in (law, used here as a benchmark: 49 CFR 393.75(c))": the section's title, and that a practice has no publication, stand
 * in the report.
 */
export const againstWords = (limit: AppliedLimit): string =>
  `against ${plainLimit(limit)
    .replace('(trade practice, no publication)', '(trade practice)')
    .replace(/: 49 CFR (\d+\.\d+), .*, (\1(?:\([a-z0-9]+\))*)\)$/, ': 49 CFR $2)')}`;
