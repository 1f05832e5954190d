// Why: a figure's answer stands among the facts like a reading, so that a rule need not know which it is.
import type { Fact, Facts } from '../known/facts.ts';
import type { Doubt } from '../known/record.ts';
import type { Observation } from '../said/entry.ts';
import type { Figure } from './figure.ts';
import { leavesRoom } from './growing-facts.ts';
import { factKey, listedFacts } from './listed-facts.ts';

/** A worked figure as a fact: evidence and doubts of all its inputs together; undefined for a gap. */
export function figureFact(figure: Figure): Fact | undefined {
  if (figure.result.is !== 'worked') return undefined;
  const evidence = new Map<string, Observation>();
  const doubts = new Set<Doubt>();
  for (const { given } of figure.inputs) {
    for (const o of given.fact?.evidence ?? []) evidence.set(o.id, o);
    for (const d of given.fact?.doubts ?? []) doubts.add(d);
  }
  const observations = [...evidence.values()];
  const { value } = figure.result;
  return {
    part: figure.card.gives.part,
    ...(figure.place === undefined ? {} : { place: figure.place }),
    aspect: figure.card.gives.aspect,
    standing: 'known',
    value,
    sides: [{ value, evidence: observations }],
    doubts: [...doubts],
    evidence: observations,
    figure: figure.id,
  };
}

/**
 * The facts with the figures' answers among them. What was seen keeps standing, also where two sources disagree; a figure
 * fills only what is not known.
 */
export function layFigures(facts: Facts, figures: readonly Figure[]): Facts {
  const laid = new Map<string, Fact>();
  for (const figure of figures) {
    const fact = figureFact(figure);
    if (fact && leavesRoom(facts.get(fact.part, fact.aspect, fact.place)) && !laid.has(factKey(fact))) {
      laid.set(factKey(fact), fact);
    }
  }
  if (laid.size === 0) return facts;
  const seen = facts.every();
  const kept = seen.map((f) => laid.get(factKey(f)) ?? f);
  const keys = new Set(seen.map(factKey));
  const added = [...laid].filter(([key]) => !keys.has(key)).map(([, f]) => f);
  return listedFacts([...kept, ...added], facts);
}
