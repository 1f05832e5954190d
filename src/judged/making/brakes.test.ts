// Why: the wrong limit for a brake lining is a false stop, or a missed one.
import { expect, test } from 'vitest';
import { factsFromList, type PlainFact } from '../../../test/facts-from-list.ts';
import { judge } from '../judge.ts';
import { mayHaveAirBrakes } from './brakes.ts';

const fluid: PlainFact = {
  part: 'brake_fluid',
  aspect: 'moisture',
  value: { is: 'quantity', value: 3, unit: '%' },
};
const air: PlainFact = {
  part: 'air_gauges',
  aspect: 'cut_out',
  value: { is: 'quantity', value: 125, unit: '[psi]' },
};
const pad: PlainFact = {
  part: 'brake_drum_rotor',
  place: 'right-rear',
  aspect: 'lining',
  value: { is: 'quantity', value: 5, unit: 'mm', plusOrMinus: 0.5 },
};

test.each([
  ['nothing known', [], undefined, true],
  ['a class A diesel', [], 'class-a-diesel', true],
  ['a class C', [], 'class-c', false],
  ['brake fluid looked at', [fluid], undefined, false],
  ['a class A diesel with brake fluid', [fluid], 'class-a-diesel', false],
  ['air pressure read beside some fluid', [fluid, air], undefined, true],
] as const)('%s', (_, list, kind, may) => {
  expect(mayHaveAirBrakes(factsFromList(list, kind))).toBe(may);
});

test('a pad of 5 mm stops nothing where the brakes are hydraulic, and stops where they may be air', () => {
  const verdictOf = (list: readonly PlainFact[]): readonly string[] =>
    judge(factsFromList(list))
      .filter((f) => f.rule.startsWith('brake-lining') && f.fact !== undefined)
      .map((f) => f.verdict);
  expect(verdictOf([pad, fluid])).toEqual(['sound']);
  expect(verdictOf([pad])).toEqual(['stop']);
});
