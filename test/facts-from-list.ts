// Why: tests of rules, figures and documents need facts without a log; this answers from a plain list.
import type { VehicleKind } from '../src/catalogue/vehicle-kind.ts';
import type { Fact, Facts } from '../src/known/facts.ts';
import { indexFacts } from '../src/known/index-facts.ts';
import type { Doubt } from '../src/known/record.ts';
import type { Value } from '../src/said/entry.ts';
import { type Day, day } from '../src/units/day.ts';

/** A fact without the trimmings. */
export interface PlainFact {
  readonly part: string;
  readonly place?: string;
  readonly aspect: string;
  readonly value: Value;
  readonly doubts?: readonly Doubt[];
  /** A second value that disagrees. */
  readonly against?: Value;
  readonly standing?: 'known' | 'unknown';
}

export const proofDay: Day = day('2026-11-24');

/** One fact, as the record would give it. */
export function factFrom(plain: PlainFact): Fact {
  const { part, place, aspect, value, doubts = [], against } = plain;
  const standing = against ? 'conflict' : (plain.standing ?? (value.is === 'unknown' ? 'unknown' : 'known'));
  return {
    part,
    ...(place === undefined ? {} : { place }),
    aspect,
    standing,
    value,
    doubts,
    evidence: [],
    sides: against
      ? [
          { value, evidence: [] },
          { value: against, evidence: [] },
        ]
      : [{ value, evidence: [] }],
  };
}

/** Facts of an invented unit. */
export function factsFromList(
  list: readonly PlainFact[],
  kind?: VehicleKind,
  equipment: Readonly<Record<string, boolean>> = {},
  on: Day = proofDay,
): Facts {
  const unit = {
    id: 'invented',
    equipment,
    invented: true,
    putAway: false,
    ...(kind ? { vehicle: kind } : {}),
  };
  return indexFacts(list.map(factFrom), unit, on);
}
