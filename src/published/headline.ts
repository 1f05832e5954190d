// Why: the first line of a listing: years, class, length, fuel, slides, miles, price; only what is known plainly.
import { aspectOf } from '../catalogue/index.ts';
import { vehicleKindNames } from '../catalogue/vehicle-kind.ts';
import type { Finding } from '../judged/finding.ts';
import type { Fact } from '../known/facts.ts';
import type { UnitFacts } from '../known/record.ts';
import { dayOf } from '../units/day.ts';
import { showMoney } from '../units/money.ts';
import { convert } from '../units/quantity.ts';
import { basisOf, weakest } from './basis.ts';
import type { Claim, Unpublished } from './document.ts';
import { isFault } from './fault.ts';
import { evidenceOf } from './line-claims.ts';
import { dayWithAge, walkDayOf } from './plain-day.ts';
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

/** The year of the coach: the dealership's, else as it was said. */
function coachYear(u: Unpublished): { readonly words: string; readonly facts: readonly Fact[] } {
  const { year } = u.record.unit;
  if (year !== undefined) return { words: `Coach year ${year}`, facts: [] };
  const said = u.facts.get('coach', 'year');
  if (said === undefined || said.standing !== 'known' || said.value.is === 'unknown')
    return { words: 'Coach year not known', facts: [] };
  return { words: `Coach year ${plainValue(said.value, aspectOf('coach', 'year'))}, as said`, facts: [said] };
}

/** Whether what the unit is called was only said on the walk: no paper and nobody at the desk gave it a name. */
export const isNameSaid = (u: Pick<Unpublished, 'record' | 'facts'>): boolean =>
  u.record.unit.name === undefined &&
  [u.facts.get('coach', 'maker'), u.facts.get('coach', 'model')].some((f) =>
    f?.evidence.some((o) => o.source.from === 'speech'),
  );

const blank = {
  section: 'headline',
  standing: 'backed',
  basis: 'none',
  evidence: [],
  facts: [],
  figures: [],
  findings: [],
  published: true,
} as const;

/** How many faults there are of each kind: a buyer reads that before anything that is well. */
function faultCount(u: Unpublished): readonly Claim[] {
  const faults = u.findings.filter(isFault);
  if (faults.length === 0) return [];
  const count = (verdict: Finding['verdict']): number => faults.filter((f) => f.verdict === verdict).length;
  const words = [
    [count('stop'), `that stop${count('stop') === 1 ? 's' : ''} it from being driven or used`],
    [count('repair'), 'to repair'],
    [count('watch'), 'to watch'],
  ] as const;
  return [
    {
      ...blank,
      id: 'headline/faults',
      text: `Faults found: ${words
        .filter(([n]) => n > 0)
        .map(([n, what]) => `${n} ${what}`)
        .join(', ')}. All of them are told below.`,
      findings: faults.map((f) => f.id),
    },
  ];
}

/** Who walked it and when: readings of another day say so. */
function walkedOn(u: Unpublished): readonly Claim[] {
  const day = walkDayOf(u);
  if (day === undefined) return [];
  const evidence = [...u.record.standing.values()].filter((o) => dayOf(o.at) === day).slice(0, 1);
  return [
    {
      ...blank,
      id: 'headline/walked',
      text: `Walked on ${dayWithAge(day, u.on)}; what was seen or read is of that day unless another is named.`,
      evidence,
    },
  ];
}

function nameSaid(u: Unpublished): readonly Claim[] {
  if (!isNameSaid(u)) return [];
  const facts = ['maker', 'model'].flatMap((aspect) => u.facts.get('coach', aspect) ?? []);
  return [
    {
      ...blank,
      id: 'headline/name',
      text: 'Maker and model are as said on the walk; no paper of the unit was read for them.',
      basis: 'told',
      evidence: evidenceOf(facts),
      facts,
    },
  ];
}

/** "class A diesel", and that it was only said where no paper gives it. */
export const kindWords = ({ vehicle, kindFrom }: UnitFacts): string | undefined =>
  vehicle === undefined ? undefined : `${vehicleKindNames[vehicle]}${kindFrom === 'said' ? ', as said' : ''}`;

function firstLine(u: Unpublished): Claim {
  const { unit } = u.record;
  const found = [
    ['chassis_label', 'chassis_year'],
    ['coach', 'length'],
    ['engine', 'fuel'],
    ['slide', 'count'],
    ['odometer', 'reading'],
  ]
    .map(([part = '', aspect = '']) => plainFact(u, part, aspect))
    .filter((f) => f !== undefined);
  const chassis = found.find((f) => f.aspect === 'chassis_year');
  const kind = kindWords(unit);
  // "class A diesel" has said the fuel.
  const rest = found.filter(
    (f) => f !== chassis && !(f.aspect === 'fuel' && kind?.includes(plainValue(f.value)) === true),
  );
  const year = coachYear(u);
  const chassisWords =
    chassis === undefined
      ? u.facts.mayHave('chassis_label')
        ? ', chassis year not read'
        : ''
      : `, chassis year ${words(chassis)}`;
  const bits = [
    `${year.words}${chassisWords}`,
    kind ?? 'kind of vehicle not known',
    ...rest.map(words),
    ...(unit.asking === undefined ? [] : [showMoney(unit.asking)]),
  ];
  const facts = [...year.facts, ...(chassis === undefined ? [] : [chassis]), ...rest];
  const paper = (['year', 'vehicle', 'asking'] as const).filter((k) => unit[k] !== undefined);
  return {
    ...blank,
    id: 'headline',
    text: bits.join(' · '),
    basis: facts.length === 0 ? 'label' : weakest(facts.map(basisOf)),
    evidence: evidenceOf(facts),
    facts,
    paper: ['name', ...paper],
  };
}

/** The first lines: what it is, how much is wrong, when it was walked, and what of that was only said; then the price. */
export function headline(u: Unpublished): readonly Claim[] {
  const { unit } = u.record;
  const asking: readonly Claim[] =
    unit.asking === undefined
      ? []
      : [
          {
            ...blank,
            id: 'money/asking',
            text: `Asking price ${showMoney(unit.asking)}.${unit.consigned ? ' Sold for its owner, on consignment.' : ''}`,
            section: 'money',
            basis: 'label',
            paper: ['asking', ...(unit.consigned === undefined ? [] : ['consigned'])],
          },
        ];
  return [firstLine(u), ...faultCount(u), ...walkedOn(u), ...nameSaid(u), ...asking];
}
