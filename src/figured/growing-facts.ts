// Why: figures are worked one after another, each seeing the answers before it; laying the whole record anew each time is slow.
import type { Fact, Facts } from '../known/facts.ts';
import { factKey } from './listed-facts.ts';

/** Facts to which answers are added one at a time. What was seen keeps standing; an unknown gives way. */
export interface GrowingFacts extends Facts {
  add(fact: Fact): void;
}

/** True when what the record has leaves room for a figured answer. */
export const leavesRoom = (seen: Fact | undefined): boolean =>
  seen === undefined || seen.standing === 'unknown';

/** Facts over a record, growing. */
export function growingFacts(base: Facts): GrowingFacts {
  const added = new Map<string, Fact>();
  const over = (seen: readonly Fact[], isAsked: (f: Fact) => boolean): readonly Fact[] => {
    const mine = [...added.values()].filter(isAsked);
    if (mine.length === 0) return seen;
    return [...seen.filter((f) => !added.has(factKey(f))), ...mine];
  };
  return {
    on: base.on,
    unit: base.unit,
    kind: base.kind,
    mayHave: (part) => base.mayHave(part),
    get: (part, aspect, place) => {
      const seen = base.get(part, aspect, place);
      return leavesRoom(seen) ? (added.get(factKey({ part, aspect, place })) ?? seen) : seen;
    },
    all: (part, aspect) => over(base.all(part, aspect), (f) => f.part === part && f.aspect === aspect),
    of: (part) => over(base.of(part), (f) => f.part === part),
    every: () => over(base.every(), () => true),
    add: (fact) => {
      const key = factKey(fact);
      if (!added.has(key) && leavesRoom(base.get(fact.part, fact.aspect, fact.place))) added.set(key, fact);
    },
  };
}
