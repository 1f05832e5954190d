// Why: the first line of a listing: years, class, length, fuel, slides, miles, price; only what is known plainly.
import { aspectOf } from '../catalogue/index.ts';
import { vehicleKindNames } from '../catalogue/vehicle-kind.ts';
import type { Fact } from '../known/facts.ts';
import { showMoney } from '../units/money.ts';
import { convert } from '../units/quantity.ts';
import { basisOf, weakest } from './basis.ts';
import type { Claim, Unpublished } from './document.ts';
import { evidenceOf } from './line-claims.ts';
import { feetAndInches, plainValue } from './plain-value.ts';

const plain = new Set(['measured', 'seen', 'label', 'figured']);

/** The fact, if it is known without a guess and without hearsay. */
export function plainFact(u: Unpublished, part: string, aspect: string): Fact | undefined {
  const found = u.facts.get(part, aspect) ?? u.facts.all(part, aspect)[0];
  return found !== undefined && plain.has(basisOf(found)) ? found : undefined;
}

function words(f: Fact): string {
  const value = plainValue(f.value, aspectOf(f.part, f.aspect));
  if (f.aspect === 'length' && f.value.is === 'quantity')
    return feetAndInches(convert(f.value.value, f.value.unit, '[ft_i]'));
  if (f.part === 'slide') return `${value} slide-out${value === '1' ? '' : 's'}`;
  if (f.part === 'odometer' && f.value.is === 'quantity') return value.replace(/ mi$/, ' miles');
  return value;
}

/** The headline, and one sentence each for years and price, which come from what the dealership wrote down. */
export function headline(u: Unpublished): readonly Claim[] {
  const { unit } = u.record;
  const facts = [
    ['chassis_label', 'chassis_year'],
    ['coach', 'length'],
    ['engine', 'fuel'],
    ['slide', 'count'],
    ['odometer', 'reading'],
  ]
    .map(([part = '', aspect = '']) => plainFact(u, part, aspect))
    .filter((f) => f !== undefined);
  const chassis = facts.find((f) => f.aspect === 'chassis_year');
  const rest = facts.filter((f) => f !== chassis);
  const years = unit.year === undefined ? 'Coach year not known' : `Coach year ${unit.year}`;
  const chassisWords =
    chassis === undefined
      ? u.facts.mayHave('chassis_label')
        ? ', chassis year not read'
        : ''
      : `, chassis year ${words(chassis)}`;
  const bits = [
    `${years}${chassisWords}`,
    ...(unit.vehicle === undefined ? [] : [vehicleKindNames[unit.vehicle]]),
    ...rest.map(words),
    ...(unit.asking === undefined ? [] : [showMoney(unit.asking)]),
  ];
  const paper = (['year', 'vehicle', 'asking'] as const).filter((k) => unit[k] !== undefined);
  const all: Claim[] = [
    {
      id: 'headline',
      text: `${bits.join(' · ')}`,
      section: 'headline',
      standing: 'backed',
      basis: facts.length === 0 ? 'label' : weakest(facts.map(basisOf)),
      evidence: evidenceOf(facts),
      facts,
      figures: [],
      findings: [],
      published: true,
      paper: ['name', ...paper],
    },
  ];
  if (unit.asking !== undefined) {
    all.push({
      id: 'money/asking',
      text: `Asking price ${showMoney(unit.asking)}.${unit.consigned ? ' Sold for its owner, on consignment.' : ''}`,
      section: 'money',
      standing: 'backed',
      basis: 'label',
      evidence: [],
      facts: [],
      figures: [],
      findings: [],
      published: true,
      paper: ['asking', ...(unit.consigned === undefined ? [] : ['consigned'])],
    });
  }
  return all;
}
