// Why: puts one value to a rule's steps and says how it comes out; doubts about who said it come later.
import type { Fact, Facts } from '../known/facts.ts';
import type { Value } from '../said/entry.ts';
import { type Citation, limitOn } from '../standards/standard.ts';
import { answerOf } from './answer.ts';
import type { AppliedLimit } from './finding.ts';
import { readingOf } from './reading.ts';
import type { NumberStep, Outcome, Rule, Step, Verdict, Weight, WordStep } from './rule.ts';
import { badness, doubtfulVerdictOf, verdictOf } from './verdict.ts';

/** How a value comes out under a rule. */
export interface Weighed {
  readonly outcome: Outcome;
  readonly verdict: Verdict;
  readonly weight: Weight;
  readonly limits: readonly AppliedLimit[];
  readonly limit?: AppliedLimit;
  readonly margin?: number;
  readonly cites: readonly Citation[];
}

/** One step's answer. `mute`: this step has nothing to say to a value of this kind. */
interface Stepped {
  readonly step: Step;
  readonly says: 'meets' | 'fails' | 'near' | 'mute';
  readonly limit?: AppliedLimit;
  readonly margin?: number;
}

const isWordStep = (step: Step): step is WordStep => 'mustBe' in step;
/** Conversions leave a trace in the last digits; a reading that is on the limit is on it. */
const nearlyZero = 1e-9;

/** Puts a value to every step. Without a value, only the limits are gathered. */
export function weighValue(
  rule: Rule,
  value: Value | undefined,
  facts: Facts,
  place: string | undefined,
  isHedged: boolean,
): Weighed {
  const stepped = rule.steps.map((step) =>
    isWordStep(step) ? weighWord(rule, step, value) : weighNumber(step, value, facts, place, isHedged),
  );
  const limits = stepped.flatMap((s) => (s.limit ? [s.limit] : []));
  const cites = rule.steps.flatMap((s) => (isWordStep(s) ? s.cites : []));
  const decided = decide(stepped);
  if (decided) {
    const verdict =
      decided.says === 'fails' ? verdictOf(decided.step.weight) : doubtfulVerdictOf(decided.step.weight);
    return {
      outcome: decided.says === 'fails' ? 'fails' : 'cannot tell',
      verdict,
      weight: decided.step.weight,
      limits,
      cites,
      ...appliedOf(decided),
    };
  }
  const met = stepped.filter((s) => s.says === 'meets');
  const nearest =
    met.filter((s) => s.margin !== undefined).sort((a, b) => (a.margin ?? 0) - (b.margin ?? 0))[0] ?? met[0];
  // A number says nothing to a step that asks for a word; a word has to satisfy every step there is.
  const isWord = value !== undefined && answerOf(rule.part, rule.aspect, value) !== undefined;
  const isWhole =
    met.length > 0 && stepped.every((s) => s.says === 'meets' || (isWordStep(s.step) && !isWord));
  if (nearest && isWhole)
    return {
      outcome: 'meets',
      verdict: 'sound',
      weight: rule.steps[0].weight,
      limits,
      cites,
      ...appliedOf(nearest),
    };
  return { outcome: 'cannot tell', verdict: 'not seen', weight: rule.steps[0].weight, limits, cites };
}

/** The step that gives the worst verdict; between equals one that is sure before one that is not. */
function decide(stepped: readonly Stepped[]): Stepped | undefined {
  let worst: Stepped | undefined;
  const rank = (s: Stepped): number =>
    s.says === 'fails' ? badness(verdictOf(s.step.weight)) + 0.5 : badness(doubtfulVerdictOf(s.step.weight));
  for (const s of stepped) {
    if ((s.says === 'fails' || s.says === 'near') && (!worst || rank(s) > rank(worst))) worst = s;
  }
  return worst;
}

const appliedOf = (s: Stepped): { limit?: AppliedLimit; margin?: number } => ({
  ...(s.limit ? { limit: s.limit } : {}),
  ...(s.margin === undefined ? {} : { margin: s.margin }),
});

function weighWord(rule: Rule, step: WordStep, value: Value | undefined): Stepped {
  const answer = value && answerOf(rule.part, rule.aspect, value);
  if (!answer || !value) return { step, says: 'mute' };
  const listed = answer.words.some((w) => step.words.includes(w));
  if (step.mustBe === 'one of' && listed) return { step, says: 'meets' };
  if (step.mustBe === 'none of' && listed) return { step, says: 'fails' };
  const isBad = answer.polarity === 'bad';
  if (step.mustBe === 'none of') {
    // Only good news, or a word that another step asks for, passes for want of bad news.
    const asked = rule.steps.some(
      (s) => isWordStep(s) && s.mustBe === 'one of' && answer.words.some((w) => s.words.includes(w)),
    );
    return { step, says: answer.polarity === 'good' || asked ? 'meets' : 'mute' };
  }
  return { step, says: isBad ? 'fails' : 'mute' };
}

function weighNumber(
  step: NumberStep,
  value: Value | undefined,
  facts: Facts,
  place: string | undefined,
  isHedged: boolean,
): Stepped {
  const limit = appliedLimit(step, facts, place);
  if (!limit) return { step, says: 'mute' };
  const reading = value && readingOf(value, limit.unit, step.must, facts.on, isHedged);
  if (!reading) return { step, says: 'mute', limit };
  const doubt = limit.plusOrMinus ?? 0;
  const isFloor = step.must === 'at least' || step.must === 'more than';
  const isOpen = step.must === 'more than' || step.must === 'less than';
  // Distances to the good side of the limit: the worst and the best they may be.
  const worst = snap(isFloor ? reading.low - (limit.value + doubt) : limit.value - doubt - reading.high);
  const best = snap(isFloor ? reading.high - (limit.value - doubt) : limit.value + doubt - reading.low);
  const margin = snap(isFloor ? reading.middle - limit.value : limit.value - reading.middle);
  const meets = isOpen ? worst > 0 : worst >= 0;
  const fails = isOpen ? best <= 0 : best < 0;
  return { step, says: meets ? 'meets' : fails ? 'fails' : 'near', limit, margin };
}

const snap = (n: number): number => (Math.abs(n) < nearlyZero ? 0 : n);

/** A plate that was only told of, or guessed at, is no limit. */
const isLoose = (plate: Fact): boolean =>
  plate.doubts.some((d) => d === 'hearsay' || d === 'unsure' || d === 'hedged');

/** The limit as it stands on the day: published, or read off the unit's own plate. */
function appliedLimit(step: NumberStep, facts: Facts, place: string | undefined): AppliedLimit | undefined {
  if (typeof step.limit === 'function') {
    const found = step.limit(facts, place);
    const value = found?.plate.value;
    if (found?.plate.standing !== 'known' || value?.is !== 'quantity' || isLoose(found.plate))
      return undefined;
    const doubt = value.plusOrMinus;
    return {
      must: step.must,
      value: value.value,
      unit: value.unit,
      ...(doubt === undefined ? {} : { plusOrMinus: doubt }),
      standing: 'maker',
      source: "this unit's own plate",
      clause: found.says,
      cites: [],
    };
  }
  const dated = limitOn(step.limit, facts.on);
  const first = dated.citations[0];
  return {
    must: step.must,
    value: dated.value,
    unit: step.limit.unit,
    standing: first.source.standing,
    source: first.source.title,
    clause: first.clause,
    cites: dated.citations,
  };
}
