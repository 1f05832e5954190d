// Why: a verb is good news of a part only with the right subject, particle and tail; which part is meant the verb helps to tell.
import type { Clause } from './clause.ts';
import { defectPhrases } from './lexicon.ts';
import { type Subject, subjectBefore } from './predicate.ts';
import type { Talk } from './talk.ts';
import { type VerbSense, type VerbUse, verbUses } from './verb-table.ts';

const set = (text: string): Set<string> => new Set(text.split(' '));
const softeners = set(
  "right back straight just all really real pretty nice nicely so good both the way it them 'em up out in a full complete whole plenty of good great lots through one",
);
const articles = set('a an the my your our his her their its this that some more');
/** What spoils the good news when it follows within a few words. */
const spoilers = set(
  'hard rough rougher slow slowly loud funny poorly crooked sometimes intermittently intermittent half halfway partway barely sporadically weak weakly dim until unless once except short slower lazy erratic erratically sideways badly backwards wrong occasionally maybe dies died stuck too about around if',
);
/** Behind "runs" and "goes": not what a part does but what it costs, reads or is. */
const otherwise = set(
  'about off from through between under into over to along past per dollars bucks hours somewhere roughly a an the is are was were has have',
);

const particle = /^(?:on|in|out|up|down|off|over)$/;
/** States left by somebody, not done by the part, unless more is said: "with the doors shut". */
const leftSo = set(
  'shut closed opened locked latched extended retracted sealed folded deployed raised lowered lifted tilted reclined leveled stowed tucked lit unlocked',
);
const well =
  /^(?:fine|good|right|easy|easily|smooth|smoothly|tight|ok|okay|up|down|out|in|itself|well|great|first|second)$/;

/** Verbs whose number is the finding: "blowing fifty-four", "came up to thirteen". */
const measured =
  /^(?:blow|run|make|hold|read|put|pull|push|come|go|cut|kick|crank|charge|get|give|register|show|take|idle|pump|throw|bring)$/;

/** What was heard: of which parts, from which words. */
export interface WorkSaid {
  readonly parts: readonly string[];
  readonly length: number;
  readonly weight: number;
  /** Where its subject is named. */
  readonly from?: number;
}

/** True where the words behind the verb leave it good news. `at`: the first word behind verb and particle. */
function tailIsGood(talk: Talk, clause: Clause, at: number): boolean {
  const { words } = talk.marks;
  for (let k = at; k < Math.min(clause.to, at + 3); k++) {
    if ((words[k - 1]?.stop ?? 0) > 0 || clause.mentions.some((m) => m.from === k)) return true;
    const n = words[k]?.norm ?? '';
    // "clunks over after about twenty-five seconds"
    if (
      /^(?:after|in|within|at)$/.test(n) &&
      [1, 2, 3].some((d) => k + d < clause.to && talk.marks.numberAt.from(k + d) !== undefined)
    )
      return true;
    if (/^(?:and|but|it|they|no|i|we|then|not|never|won't|doesn't)$/.test(n)) return true;
    if (spoilers.has(n)) return false;
    if (defectPhrases.at(words, k) && n !== 'cold') return false;
  }
  return true;
}

/** The end of the particle or complement that a sense needs, or undefined where it is not there. */
function complementEnd(
  talk: Talk,
  clause: Clause,
  i: number,
  sense: VerbSense,
  verb: string,
): number | undefined {
  const { words } = talk.marks;
  const ends = (k: number): boolean => k >= clause.to || (words[k - 1]?.stop ?? 0) > 0;
  if (!sense.needs) {
    if (ends(i + 1)) return i + 1;
    const next = words[i + 1]?.norm ?? '';
    const reading =
      measured.test(verb) && talk.marks.numberAt.from(/^(?:at|to|in|on|for)$/.test(next) ? i + 2 : i + 1);
    if (articles.has(next) || otherwise.has(next) || reading) return undefined;
    return i + 1;
  }
  if (sense.needs.has('.') && ends(i + 1)) return i + 1;
  for (let k = i + 1; k <= i + 4 && !ends(k); k++) {
    const n = words[k]?.norm ?? '';
    if (sense.needs.has(n)) {
      const next = ends(k + 1) ? '' : (words[k + 1]?.norm ?? '');
      const reading =
        measured.test(verb) && talk.marks.numberAt.from(/^(?:at|to|in|on)$/.test(next) ? k + 2 : k + 1);
      return (articles.has(next) && particle.test(n)) || next === 'of' || (next && reading)
        ? undefined
        : k + 1;
    }
    if (!softeners.has(n)) return undefined;
  }
  return undefined;
}

/** The parts a sense can be said of, given the subject; none where it is not said of a part. */
function partsMeant(talk: Talk, clause: Clause, i: number, sense: VerbSense, s: Subject): readonly string[] {
  const can = (p: string): boolean => !sense.of || sense.of.test(p);
  if (s.is === 'person') return [];
  if (s.is === 'named' && s.mention) {
    const many = /s$/.test(talk.marks.words[s.mention.to - 1]?.norm ?? '');
    const own =
      (many ? s.mention.parts.find((p) => p === 'levelling_jacks' && can(p)) : undefined) ??
      s.mention.parts.find(can);
    if (own) return [own];
    if (!s.mention.weak && !s.mention.parts.includes('coach')) return [];
  }
  const all = talk.partsFor(i, i + 1, clause);
  const sure = all.filter((p) => p !== 'coach' && can(p));
  const first = sure[0];
  const near = sense.of ? first : all[0] !== 'coach' ? all[0] : undefined;
  if (sense.implies && (!near || !talk.isClose(near, i, clause))) return [near ?? sense.implies];
  if (!near) return [];
  if (/^(?:she|he)$/.test(s.word ?? '') && !sense.of) return [];
  if (s.word === 'both' && sense.of) {
    const two = sure.slice(0, 2).filter((p) => talk.isClose(p, i, clause));
    if (two.length === 2) return two;
  }
  return [near];
}

/** A breaker or a receptacle that trips by itself, or all the time, is at fault. */
export const isNuisance = (
  words: readonly { readonly norm: string }[],
  from: number,
  to: number,
): boolean => {
  for (let k = from; k < to; k++) {
    const n = words[k]?.norm ?? '';
    if (/^(?:keeps|kept|whenever|constantly|randomly|itself|immediately|nuisance|instantly)$/.test(n))
      return true;
    if (n === 'soon' && words[k + 1]?.norm === 'as') return true;
    if (/^(?:every|each)$/.test(n) && /^(?:time|few|couple)$/.test(words[k + 1]?.norm ?? '')) return true;
    if (/^won't|wont$/.test(n) && /^(?:reset|hold|stay|set)$/.test(words[k + 1]?.norm ?? '')) return true;
  }
  return false;
};
const burns =
  /^(?:engine|generator|furnace|water_heater|hydronic|refrigerator|cooktop|oven|ac_|inverter|coach$|front_engine)/;
const dying = /^(?:dies|died|die|quits|quit|stalls|stalled|dying|conks|shuts|craps|goes)$/;
/** True where what began ends again by itself in the same sentence: "fires up but dies". */
function diesAfter(talk: Talk, clause: Clause, i: number): boolean {
  const { words, sentenceOf } = talk.marks;
  let turn = false;
  if (!burns.test(talk.partFor(i, i + 1, clause) ?? '')) return false;
  for (let k = i + 1; k < i + 12 && sentenceOf[k] === clause.sentence; k++) {
    const n = words[k]?.norm ?? '';
    if (/^(?:and|but|then)$/.test(n)) turn = true;
    if (!turn) continue;
    if (/^(?:shuts|goes|craps|conks)$/.test(n))
      return (
        /^(?:off|out|down)$/.test(words[k + 1]?.norm ?? '') &&
        /^(?:itself|right)$/.test(words[k + 2]?.norm ?? 'right') &&
        n !== 'shuts'
      );
    if (dying.test(n)) return true;
    if (/^(?:won't|doesn't|don't|wont)$/.test(n) && /^(?:stay|keep)$/.test(words[k + 1]?.norm ?? ''))
      return true;
  }
  return false;
}

/** True where this use of the verb says no more than how something was left, is fuelled, or goes on failing. */
function saysLittle(talk: Talk, clause: Clause, i: number, use: VerbUse, s: Subject): boolean {
  const { words } = talk.marks;
  const next = words[i + 1]?.norm ?? '';
  const word = words[i]?.norm ?? '';
  if (s.is === 'elided' && use.form === 'ing' && !/^(?:work|blow|run)$/.test(use.verb)) return true;
  const left = words.slice(Math.max(clause.from, i - 7), i).some((w) => w.norm === 'with');
  if (leftSo.has(word) && left && s.is === 'named') return true;
  if (use.form === 'past' && s.is === 'named' && word !== 'lit') {
    if (leftSo.has(word)) return !s.all && !well.test(next);
  }
  // "the three light tester"
  if (use.verb === 'light' && /^(?:testers?|bars?|kit|switch|fixtures?|bulbs?|meter)$/.test(next))
    return true;
  // "trips as soon as you plug in"
  if (/^(?:trip|pop|kick)$/.test(use.verb) && isNuisance(words, clause.from, clause.to)) return true;
  // "fourteen one at idle": under what it was read
  if (
    use.verb === 'idle' &&
    use.form === 'base' &&
    /^(?:at|off|high|fast|low|above|from)$/.test(words[i - 1]?.norm ?? '')
  )
    return true;
  // "it starts and then it dies"
  if (
    /^(?:start|fire|light|crank|catch|come|turn|kick|run|ignite)$/.test(use.verb) &&
    diesAfter(talk, clause, i)
  )
    return true;
  if (use.verb === 'run' && next === 'on' && /^(?:which|that)$/.test(s.word ?? '')) return true;
  return (
    (use.verb === 'crank' && next === 'for') ||
    (use.form === 'ing' && defectPhrases.at(words, i) !== undefined)
  );
}

/** What a verb at `i` says to be working; with `denied`, not to be. */
export function workSaid(talk: Talk, clause: Clause, i: number, denied = false): WorkSaid | undefined {
  const { words } = talk.marks;
  const word = words[i]?.norm ?? '';
  for (const use of verbUses(word)) {
    if (denied && use.form !== 'base' && use.form !== 'ing') continue;
    const s = subjectBefore(talk, clause, i, use.form);
    if (!s || s.is === 'person' || (!denied && saysLittle(talk, clause, i, use, s))) continue;
    // "the fan hums" may be a fault: a word that can be one needs its particle
    const doubtful =
      defectPhrases.at(words, i) !== undefined &&
      /^(?:roar|whir|whirl|hum|cycle|drop|flash|blink|run|start|crank|go)$/.test(use.verb);
    for (const sense of use.senses) {
      if (doubtful && !sense.needs) continue;
      if (use.verb === 'light' && words[i + 1]?.norm === 'up' && !sense.needs) continue;
      if (sense.needs?.has('.') && use.verb === 'go' && s.is !== 'named' && !s.all) continue;
      let end = complementEnd(talk, clause, i, sense, use.verb);
      if (end === undefined || (!denied && !tailIsGood(talk, clause, end))) continue;
      const parts = partsMeant(talk, clause, i, sense, s);
      if (parts.length === 0) continue;
      while (end < clause.to && words[end - 1]?.stop === 0 && trailing.has(words[end]?.norm ?? '')) end++;
      return {
        parts,
        length: end - i,
        weight: s.is === 'named' ? 0.8 : sense.of ? 0.7 : 0.65,
        ...(s.mention ? { from: s.mention.from } : {}),
      };
    }
  }
  return undefined;
}
const trailing = set(
  'like they should it supposed to as designed good fine okay ok well right smooth smoothly strong easy quiet straight even',
);
