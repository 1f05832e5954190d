// Why: tests of rules, figures and documents need facts without a log; this answers from a plain list.
import { partOf } from '../src/catalogue/index.ts';
import type { VehicleKind } from '../src/catalogue/vehicle-kind.ts';
import type { Fact, Facts } from '../src/known/facts.ts';
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
  const facts = list.map(factFrom);
  const byKey = new Map<string, Fact[]>();
  const byPart = new Map<string, Fact[]>();
  for (const f of facts) {
    const key = `${f.part}/${f.aspect}`;
    byKey.set(key, [...(byKey.get(key) ?? []), f]);
    byPart.set(f.part, [...(byPart.get(f.part) ?? []), f]);
  }
  return {
    on,
    kind,
    unit: { id: 'invented', equipment, invented: true, putAway: false, ...(kind ? { vehicle: kind } : {}) },
    get: (part, aspect, place) => byKey.get(`${part}/${aspect}`)?.find((f) => f.place === place),
    all: (part, aspect) => byKey.get(`${part}/${aspect}`) ?? [],
    of: (part) => byPart.get(part) ?? [],
    every: () => facts,
    mayHave: (part) =>
      equipment[part] !== false && (kind === undefined || (partOf(part)?.kinds.includes(kind) ?? false)),
  };
}
