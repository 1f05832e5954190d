// Why: one rule and one fact (or none) make one finding; here stands how far a doubtful fact may be believed.
import { partOf } from '../catalogue/index.ts';
import type { Fact, Facts } from '../known/facts.ts';
import { cautionOf } from './caution.ts';
import type { Finding } from './finding.ts';
import type { Outcome, Rule, Verdict } from './rule.ts';
import { badness, doubtfulVerdictOf, worse } from './verdict.ts';
import { type Weighed, weighValue } from './weigh-value.ts';

/**
 * Judges a fact by a rule. No fact, an unknown, another dimension, a conflict, hearsay, or a reading nearer to a limit
 * than its own plus-or-minus: "cannot tell", which is never a pass.
 */
export function judgeOne(
  rule: Rule,
  fact: Fact | undefined,
  facts: Facts,
  place: string | undefined = fact?.place,
): Finding {
  const weighed = weighFact(rule, fact, facts, place);
  const caution = cautionOf(rule.caution);
  return {
    id: `${rule.id}/${rule.part}/${place ?? ''}`,
    rule: rule.id,
    part: rule.part,
    ...(place === undefined ? {} : { place }),
    aspect: rule.aspect,
    verdict: weighed.verdict,
    outcome: weighed.outcome,
    weight: weighed.weight,
    asks: rule.asks,
    reason: wordsFor(rule, fact, weighed.outcome),
    limits: weighed.limits,
    ...(weighed.limit ? { limit: weighed.limit } : {}),
    cites: weighed.cites,
    ...(fact ? { fact } : {}),
    ...(weighed.margin === undefined ? {} : { margin: weighed.margin }),
    next: rule.next,
    who: rule.who,
    ...(caution === undefined ? {} : { caution }),
    look: rule.look,
    minutes: rule.minutes,
  };
}

function weighFact(rule: Rule, fact: Fact | undefined, facts: Facts, place: string | undefined): Weighed {
  if (!fact || fact.standing === 'unknown' || fact.value.is === 'unknown')
    return weighValue(rule, undefined, facts, place, false);
  const isHedged = fact.doubts.includes('hedged');
  if (fact.standing === 'conflict') {
    const values = fact.sides.length > 0 ? fact.sides.map((s) => s.value) : [fact.value];
    const all = values.map((v) => weighValue(rule, v, facts, place, isHedged));
    const worst = all.reduce((a, b) => (badness(b.verdict) > badness(a.verdict) ? b : a));
    return { ...worst, outcome: 'cannot tell', verdict: worse(worst.verdict, 'watch') };
  }
  const weighed = weighValue(rule, fact.value, facts, place, isHedged);
  if (!isDoubtful(fact, isHedged) || weighed.outcome === 'cannot tell') return weighed;
  const verdict: Verdict = weighed.outcome === 'fails' ? doubtfulVerdictOf(weighed.weight) : 'not seen';
  return { ...weighed, outcome: 'cannot tell', verdict };
}

/** Told by somebody else, hardly heard, read off a paper though the thing itself is here, or a guess at a word. */
export function isDoubtful(fact: Fact, isHedged: boolean): boolean {
  const isPaper = partOf(fact.part)?.station === 'papers';
  return (
    fact.doubts.includes('hearsay') ||
    fact.doubts.includes('unsure') ||
    (fact.doubts.includes('on paper only') && !isPaper) ||
    (isHedged && (fact.value.is === 'state' || fact.value.is === 'text'))
  );
}

function wordsFor(rule: Rule, fact: Fact | undefined, outcome: Outcome): string {
  if (outcome === 'meets') return rule.says.meets;
  if (outcome === 'fails') return rule.says.fails;
  return !fact || fact.standing === 'unknown' || fact.value.is === 'unknown'
    ? rule.says.notSeen
    : rule.says.cannotTell;
}
