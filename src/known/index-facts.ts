// Why: the facts door is asked thousands of times a packet, so it looks up and never searches.
import type { Day } from '../units/day.ts';
import type { Fact, Facts } from './facts.ts';
import { hasNone } from './has-none.ts';
import type { UnitFacts } from './record.ts';

const none: readonly Fact[] = [];

/**
 * The facts door over a list of facts. `known` decides what the unit has (a figure says nothing about that); it is `facts`
 * unless told otherwise.
 */
export function indexFacts(
  facts: readonly Fact[],
  unit: UnitFacts,
  on: Day,
  known: readonly Fact[] = facts,
): Facts {
  const byPart = groupBy(facts, (f) => f.part);
  const byAspect = groupBy(facts, (f) => `${f.part}/${f.aspect}`);
  const byKey = new Map<string, Fact>();
  for (const f of facts) {
    const key = `${f.part}/${f.aspect}/${f.place ?? ''}`;
    if (!byKey.has(key)) byKey.set(key, f);
  }
  const knownOf = known === facts ? byPart : groupBy(known, (f) => f.part);
  const has = new Map<string, boolean>();
  return {
    on,
    unit,
    kind: unit.vehicle,
    get: (part, aspect, place) => byKey.get(`${part}/${aspect}/${place ?? ''}`),
    all: (part, aspect) => byAspect.get(`${part}/${aspect}`) ?? none,
    of: (part) => byPart.get(part) ?? none,
    every: () => facts,
    mayHave(part) {
      const before = has.get(part);
      if (before !== undefined) return before;
      const may = !hasNone(part, unit, (p) => knownOf.get(p) ?? none);
      has.set(part, may);
      return may;
    },
  };
}

function groupBy(facts: readonly Fact[], key: (f: Fact) => string): Map<string, Fact[]> {
  const groups = new Map<string, Fact[]>();
  for (const f of facts) {
    const of = groups.get(key(f));
    if (of) of.push(f);
    else groups.set(key(f), [f]);
  }
  return groups;
}
