// Why: most of what is wrong with a coach has no number. What was seen broken becomes a finding all the same.
import { generalAspects } from '../catalogue/general-aspect.ts';
import { aspectOf, partOf } from '../catalogue/index.ts';
import type { Aspect } from '../catalogue/part.ts';
import type { Fact, Facts } from '../known/facts.ts';
import type { Value } from '../said/entry.ts';
import { practice } from '../standards/trade-practice/practice.ts';
import { answerOf } from './answer.ts';
import { cautionOf } from './caution.ts';
import type { Finding } from './finding.ts';
import { isDoubtful } from './judge-one.ts';
import type { Verdict, Weight } from './rule.ts';
import { hazards, kin, wornAspects, wornStates } from './sighted-words.ts';
import { verdictOf } from './verdict.ts';

const cites = [practice('A fault that was seen is mended, or told to the buyer.')] as const;

/** A finding for every fact that is bad news and that no rule's finding has taken up. */
export function sighted(facts: Facts, judged: readonly Finding[]): readonly Finding[] {
  const key = (f: Fact): string => `${f.part}/${f.place ?? ''}/${kin[f.aspect] ?? f.aspect}`;
  const wanting = judged.filter((f) => f.verdict !== 'sound' && f.verdict !== 'not seen');
  const taken = new Set(wanting.flatMap((f) => (f.fact ? [key(f.fact)] : [])));
  return facts.every().flatMap((fact) => (taken.has(key(fact)) ? [] : (sight(fact) ?? [])));
}

/** The finding a fact makes by itself; undefined for good news and for what says nothing of a fault. */
export function sight(fact: Fact): Finding | undefined {
  const part = partOf(fact.part);
  if (!part || fact.figure !== undefined || fact.standing === 'unknown' || fact.aspect === 'claim')
    return undefined;
  const values = fact.standing === 'conflict' ? fact.sides.map((s) => s.value) : [fact.value];
  const bad = values.find((v) => isBadNews(fact, v));
  if (!bad) return undefined;
  const aspect = aspectOf(fact.part, fact.aspect);
  const state = bad.is === 'state' ? bad.state : undefined;
  const hazard = hazards[fact.part];
  const isWorn = wornStates.has(state ?? '') || wornAspects.has(fact.aspect);
  const weight = weigh(fact, state, isWorn);
  const isSure = fact.standing === 'known' && !isDoubtful(fact, fact.doubts.includes('hedged'));
  const verdict: Verdict = isSure || weight === 'danger' ? verdictOf(weight) : 'watch';
  const caution = cautionOf(hazard?.caution);
  return {
    id: `${ruleName(fact, state)}/${fact.part}/${fact.place ?? ''}`,
    rule: ruleName(fact, state),
    part: fact.part,
    ...(fact.place === undefined ? {} : { place: fact.place }),
    aspect: fact.aspect,
    verdict,
    outcome: isSure ? 'fails' : 'cannot tell',
    weight,
    asks: 'Was anything seen to be wrong with it?',
    reason: `${isSure ? 'Seen' : 'Said, but not sure'}: ${sayBad(aspect, bad)}.`,
    limits: [],
    cites,
    fact,
    next: isWorn
      ? 'Note it, show it to the buyer, look again before sale.'
      : 'Find the cause; mend it, or tell the buyer in writing.',
    who: hazard
      ? 'someone trained and, where the law asks for it, licensed for this system'
      : 'shop technician',
    ...(caution === undefined ? {} : { caution }),
    look: 'Look again in good light, and take a picture with something for scale.',
    minutes: 2,
  };
}

/** `seen-torn` for a part as a whole, `seen-fabric-torn` for an aspect of it, `seen-leak-yes` for a yes or no. */
const ruleName = (fact: Fact, state: string | undefined): string =>
  fact.aspect === 'condition' && state !== undefined
    ? `seen-${state}`
    : `seen-${fact.aspect}-${state ?? 'said'}`;

function isBadNews(fact: Fact, value: Value): boolean {
  if (value.is === 'unknown') return false;
  const answer = answerOf(fact.part, fact.aspect, value);
  if (value.is === 'state') {
    if (answer && answer.polarity !== 'neutral') return answer.polarity === 'bad';
    return saidAsBad(fact, value);
  }
  // A number or a phrase is bad news only where it was said as a defect.
  return (
    saidAsBad(fact, value) &&
    !(value.is === 'quantity' && value.value === 0) &&
    !(value.is === 'count' && value.count === 0)
  );
}

const saidAsBad = (fact: Fact, value: Value): boolean => {
  const evidence = fact.sides.find((s) => s.value === value)?.evidence ?? fact.evidence;
  return evidence.some((e) => e.polarity === 'bad' && (e.sense === 'defect' || e.sense === 'operates'));
};

function weigh(fact: Fact, state: string | undefined, isWorn: boolean): Weight {
  const hazard = hazards[fact.part];
  if (hazard) {
    const hits =
      hazard.when === 'any fault'
        ? !isWorn
        : hazard.when.includes(state ?? '') || hazard.when.includes(fact.aspect);
    if (hits) return 'danger';
  }
  return isWorn ? 'wear' : 'defect';
}

/** Aspects that a state already names: "weak" needs no "strength" before it. */
const saysItself = new Set(['strength', 'speed', 'cooling', 'sag', 'flex', 'wet', 'safety']);

/** What was said, without the name of the part, which stands beside it: "torn", "fabric torn", "a leak: yes" said as "leak". */
function sayBad(aspect: Aspect | undefined, value: Value): string {
  const own = aspect && !generalAspects.includes(aspect) && !saysItself.has(aspect.id) ? aspect.name : '';
  if (value.is === 'text') return [aspect?.name, value.text].filter(Boolean).join(': ');
  if (value.is !== 'state') return aspect?.name ?? 'a fault';
  if (value.state === 'yes') return aspect?.name ?? 'a fault';
  if (aspect?.id === 'operates' && (value.state === 'fails' || value.state === 'no')) return 'does not work';
  if (value.state === 'no') return `${aspect?.name ?? 'it'}: no`;
  return own && own !== value.state ? `${own} ${value.state}` : value.state;
}
