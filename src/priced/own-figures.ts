// Why: a comparable can only be brought to what is known of this unit; what is not known adjusts nothing and is said.
import { isMotorized } from '../catalogue/vehicle-kind.ts';
import type { Fact, Facts } from '../known/facts.ts';
import { convert, isSameDimension } from '../units/quantity.ts';
import type { Unit } from '../units/unit.ts';

export type OwnName = 'year' | 'lengthFt' | 'miles' | 'slides' | 'powerHp' | 'generatorHours';

/** What is known of the unit, as far as prices turn on it, and cautions for what is not. */
export interface OwnFigures {
  readonly own: Readonly<Partial<Record<OwnName, number>>>;
  readonly cautions: readonly string[];
}

interface Wanted {
  readonly name: OwnName;
  readonly from: readonly (readonly [part: string, aspect: string])[];
  readonly unit?: Unit;
  readonly motorizedOnly?: boolean;
  /** Part without which the figure is nought. */
  readonly of?: string;
}

const wanted: readonly Wanted[] = [
  { name: 'year', from: [['coach', 'year']] },
  { name: 'lengthFt', from: [['coach', 'length']], unit: '[ft_i]' },
  { name: 'miles', from: [['odometer', 'reading']], unit: '[mi_i]', motorizedOnly: true },
  { name: 'slides', from: [['slide', 'count']], of: 'slide' },
  { name: 'powerHp', from: [['engine', 'power']], unit: '[HP]', motorizedOnly: true },
  {
    name: 'generatorHours',
    from: [
      ['generator', 'hours'],
      ['hour_meters', 'generator_hours'],
    ],
    unit: 'h',
    motorizedOnly: true,
    of: 'generator',
  },
];

/** The unit's own figures out of its facts. A fact in conflict is not taken. */
export function ownFigures(facts: Facts): OwnFigures {
  const own: Partial<Record<OwnName, number>> = {};
  const cautions: string[] = [];
  for (const want of wanted) {
    if (want.motorizedOnly && facts.kind !== undefined && !isMotorized(facts.kind)) continue;
    if (want.of !== undefined && !facts.mayHave(want.of)) {
      own[want.name] = 0;
      continue;
    }
    const found = want.from
      .flatMap(([part, aspect]) => facts.all(part, aspect))
      .filter((f) => f.standing !== 'unknown');
    const numbers = new Set(found.map((f) => numberOf(f, want.unit)).filter((n) => n !== undefined));
    const [number] = numbers;
    if (numbers.size === 1 && number !== undefined && found.every((f) => f.standing === 'known'))
      own[want.name] = number;
    else cautions.push(`${found.length > 0 ? 'unit-unsettled' : 'unit-missing'}:${want.name}`);
  }
  const odometer = facts
    .all('odometer', 'true_known')
    .some((f) => f.value.is === 'text' && f.value.text !== 'actual');
  return { own, cautions: odometer ? [...cautions, 'miles-not-actual'] : cautions };
}

function numberOf({ value }: Fact, unit: Unit | undefined): number | undefined {
  if (value.is === 'count') return value.count;
  if (value.is === 'text') return /^\s*\d+(\.\d+)?\s*$/.test(value.text) ? Number(value.text) : undefined;
  if (value.is !== 'quantity') return undefined;
  const middle = value.upTo === undefined ? value.value : (value.value + value.upTo) / 2;
  if (unit === undefined) return middle;
  return isSameDimension(value.unit, unit) ? convert(middle, value.unit, unit) : undefined;
}
