// Why: tests of documents need a small unit whose every fact is in plain sight. Invented: no such coach exists.

import type { State } from '../src/catalogue/state.ts';
import type { AppliedLimit, Finding } from '../src/judged/finding.ts';
import type { Fact, Facts } from '../src/known/facts.ts';
import type { Doubt, UnitFacts, UnitRecord } from '../src/known/record.ts';
import type { Unpublished } from '../src/published/document.ts';
import type { Observation, Value } from '../src/said/entry.ts';
import { day } from '../src/units/day.ts';
import { dollars } from '../src/units/money.ts';
import type { Unit } from '../src/units/unit.ts';

export const onDay = day('2026-11-24');
export const mediaId = '01936000-0000-7000-8000-00000000aaaa';
const unitId = '01936000-0000-7000-8000-00000000bbbb';
const uuid = (n: number): string => `01936000-0000-7000-8000-${n.toString(16).padStart(12, '0')}`;

let last = 0;

export const quantityOf = (value: number, unit: Unit, plusOrMinus?: number): Value => ({
  is: 'quantity',
  value,
  unit,
  ...(plusOrMinus === undefined ? {} : { plusOrMinus }),
});
export const stateOf = (state: State): Value => ({ is: 'state', state });
export const textOf = (text: string): Value => ({ is: 'text', text });

/** An observation spoken on the walk at a second of it. */
export function spokenAt(
  start: number,
  part: string,
  aspect: string,
  value: Value,
  words: string,
  more: Partial<Observation> = {},
): Observation {
  last += 1;
  return {
    v: 1,
    kind: 'observation',
    id: uuid(last),
    dealership: 'demo',
    unit: unitId,
    at: '2026-11-24T15:00:00Z',
    by: 'R. Ames',
    device: 'phone',
    part,
    aspect,
    value,
    sense: 'condition',
    polarity: 'neutral',
    hedged: false,
    sure: 0.9,
    source: { from: 'speech', media: mediaId, start, end: start + 4, words },
    ...more,
  };
}

/** The fact that one observation makes. */
export function factOf(o: Observation, doubts: readonly Doubt[] = [], more: Partial<Fact> = {}): Fact {
  return {
    part: o.part,
    aspect: o.aspect,
    ...(o.place === undefined ? {} : { place: o.place }),
    standing: o.value.is === 'unknown' ? 'unknown' : 'known',
    value: o.value,
    sides: [{ value: o.value, evidence: [o] }],
    doubts,
    evidence: [o],
    ...more,
  };
}

/** The law on tread depth, as a finding quotes it. */
export const treadLimit: AppliedLimit = {
  must: 'at least',
  value: 2,
  unit: '[in_i]/32',
  standing: 'law',
  source: '49 CFR Part 393',
  clause: '393.75(c)',
  cites: [
    {
      source: {
        id: 'cfr-393',
        title: '49 CFR Part 393',
        publisher: 'US Government',
        edition: '2026',
        standing: 'law',
        address: 'https://www.ecfr.gov/current/title-49/part-393',
        scope: 'Binds commercial vehicles; read here as a benchmark.',
      },
      clause: '393.75(c)',
      says: 'Tires other than front: at least 2/32 in of tread.',
      read: onDay,
    },
  ],
};

/** A finding; what is not given is that of a worn left rear inner tire. */
export function findingOf(more: Partial<Finding> = {}): Finding {
  const part = more.part ?? 'tire';
  const rule = more.rule ?? 'tire-tread';
  const { place = 'left-rear-inner' } = more;
  return {
    id: `${rule}/${part}/${place}`,
    rule,
    part,
    place,
    aspect: 'tread_mid',
    verdict: 'stop',
    outcome: 'fails',
    weight: 'danger',
    asks: 'Is there tread enough?',
    reason: 'The tread is worn to its limit',
    limits: [],
    cites: [],
    next: 'Replace the pair.',
    who: 'a tire shop',
    look: 'Gauge three grooves.',
    minutes: 2,
    ...more,
  };
}

/** Facts out of a list, as the flow would hand them over. */
export function factsFrom(facts: readonly Fact[], unit: UnitFacts): Facts {
  return {
    on: onDay,
    unit,
    kind: unit.vehicle,
    get: (part, aspect, place) =>
      facts.find((f) => f.part === part && f.aspect === aspect && f.place === place),
    all: (part, aspect) => facts.filter((f) => f.part === part && f.aspect === aspect),
    of: (part) => facts.filter((f) => f.part === part),
    every: () => facts,
    mayHave: () => true,
  };
}

export interface Made {
  readonly facts?: readonly Fact[];
  readonly findings?: readonly Finding[];
  readonly unit?: Partial<UnitFacts>;
  readonly record?: Partial<UnitRecord>;
  readonly rest?: Partial<Unpublished>;
}

/** A unit before publishing, from the little that a test cares about. */
export function unpublishedOf({
  facts = [],
  findings = [],
  unit = {},
  record = {},
  rest = {},
}: Made = {}): Unpublished {
  const made: UnitFacts = {
    id: unitId,
    vehicle: 'class-a-diesel',
    stock: '2417',
    name: 'Hollowell Tern 38',
    maker: 'Hollowell',
    model: 'Tern 38',
    year: 2006,
    asking: dollars(117_900),
    equipment: {},
    invented: true,
    putAway: false,
    ...unit,
  };
  const observed = [...facts.flatMap((f) => f.evidence), ...findings.flatMap((f) => f.fact?.evidence ?? [])];
  return {
    on: onDay,
    record: {
      unit: made,
      known: [],
      claims: [],
      standing: new Map(observed.map((o) => [o.id, o])),
      out: new Map(),
      coverage: [],
      walks: [],
      media: [],
      transcripts: [],
      puzzles: [],
      comparables: [],
      publications: [],
      ...record,
    },
    facts: factsFrom(facts, made),
    figures: [],
    findings,
    jobs: [],
    price: { is: 'gap', missing: [], leftOut: [] },
    ...rest,
  };
}
