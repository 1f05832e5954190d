// Why: the same quantity may stand under two names (the plate's and the coach's) or not at all; these find it for a card.
import type { Fact, Facts } from '../known/facts.ts';
import type { Supposed } from '../standards/supposed.ts';
import { isPlate } from './doubt-of.ts';
import type { Given, Need } from './figure.ts';

type Find = NonNullable<Need['find']>;
type Key = readonly [part: string, aspect: string];

/** What is said of no particular place, or else the one thing said at some place; `several` when places differ. */
export function theOne(facts: Facts, part: string, aspect: string): Fact | 'several' | undefined {
  const plain = facts.get(part, aspect);
  if (plain) return plain;
  const all = facts.all(part, aspect);
  return all.length > 1 ? 'several' : all[0];
}

/** A fact as an input. */
export function givenBy(fact: Fact): Given {
  const from = fact.figure !== undefined ? 'figured' : isPlate(fact.part) ? 'plate' : 'seen';
  return { value: fact.value, from, fact };
}

/** A supposed value as an input, with its spread and who says so. */
export const supposing = (s: Supposed): Given => ({
  value: { is: 'quantity', value: s.value, unit: s.unit, plusOrMinus: s.plusOrMinus },
  from: 'default',
  cites: s.citations,
});

const isUsable = (f: Fact): boolean =>
  f.standing === 'conflict' || (f.standing === 'known' && !f.doubts.includes('hearsay'));

/** The first of several names under which something usable stands. A conflict is handed on, never stepped over. */
export const firstOf =
  (...keys: readonly Key[]): Find =>
  (facts) => {
    const found = keys
      .map(([part, aspect]) => theOne(facts, part, aspect))
      .filter((f) => f !== undefined && f !== 'several');
    const best = found.find(isUsable) ?? found[0];
    return best && givenBy(best);
  };

/** What the facts have, or else what is supposed. A conflict is handed on, never stepped over. */
export const orSuppose =
  (supposed: Supposed, ...keys: readonly Key[]): Find =>
  (facts, place) => {
    const given = firstOf(...keys)(facts, place);
    return given?.fact && isUsable(given.fact) ? given : supposing(supposed);
  };

/** What the facts have under a supposed value's own name; for inputs that no walk records. */
export const suppose =
  (supposed: Supposed): Find =>
  () =>
    supposing(supposed);
