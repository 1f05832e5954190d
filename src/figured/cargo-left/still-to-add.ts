// Why: a scale ticket is worth little without the state of the tanks; what it does not say becomes plus-or-minus, not zero.
import type { Fact, Facts } from '../../known/facts.ts';
import { convert } from '../../units/quantity.ts';
import { unitFact } from '../../units/unit.ts';
import type { Given } from '../figure.ts';
import { firstOf, theOne } from '../look-up.ts';

type Key = readonly [part: string, aspect: string];

function wordsAt(facts: Facts, aspect: string): string {
  const fact = theOne(facts, 'scale_weight', aspect);
  if (fact === undefined || fact === 'several' || fact.standing !== 'known') return '';
  return fact.value.is === 'text'
    ? fact.value.text.toLowerCase()
    : fact.value.is === 'state'
      ? fact.value.state
      : '';
}

function gallonsOf(fact: Fact | undefined): number | undefined {
  if (fact?.standing !== 'known' || fact.value.is !== 'quantity') return undefined;
  return unitFact(fact.value.unit).dimension === 'volume'
    ? convert(fact.value.value, fact.value.unit, '[gal_us]')
    : undefined;
}

/**
 * Gallons still to come into a tank after the weighing: none when it was full, all when it was empty; half, give or take
 * half, when nobody wrote it down. Nothing is found when the size of the tank is not known.
 */
export const stillToAdd =
  (stateAspect: string, ...tank: readonly Key[]) =>
  (facts: Facts): Given | undefined => {
    const given = firstOf(...tank)(facts, undefined);
    const size = gallonsOf(given?.fact);
    if (given?.fact === undefined) return undefined;
    if (size === undefined) return given;
    const state = wordsAt(facts, stateAspect);
    const [value, plusOrMinus] = /\bfull\b/.test(state)
      ? [0, 0]
      : /\b(empty|dry|drained)\b/.test(state)
        ? [size, 0]
        : [size / 2, size / 2];
    return {
      value: { is: 'quantity', value, unit: '[gal_us]', plusOrMinus },
      from: given.from,
      fact: given.fact,
    };
  };
