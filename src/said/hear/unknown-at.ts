// Why: "never hooked it up", "nobody's been up there", "can't get my gauge on it": one grammar of denied looking, trying and knowing.
import type { Clause } from './clause.ts';
import type { Talk } from './talk.ts';
import { isHarmless, pronouns } from './unknown-harmless.ts';
import { phraseAt, toolAt, type UnknownHit } from './unknown-phrase.ts';
import {
  baseVerbs,
  between,
  deniers,
  type Form,
  ingVerbs,
  pastVerbs,
  type VerbClass,
  type Why,
} from './unknown-words.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const people = set(
  'i we nobody anybody anyone one man he she you guy tech technician fella owner owners seller somebody they',
);
const particle = /^(?:on|off|out|apart|down|up|open|over|running|started|hooked|lit|in)$/;
const articles = set('the a an my our your his her its their some any');
const whyOf: Readonly<Record<VerbClass, Why>> = {
  look: 'could not be seen or reached',
  know: 'not known',
  strong: 'not tried',
  weak: 'not tried',
};

/** What is not known from word `i` of a clause on, if a way of saying so begins there. */
export function unknownAt(talk: Talk, clause: Clause, i: number): UnknownHit | undefined {
  return toolAt(talk, clause, i) ?? deniedVerbAt(talk, clause, i) ?? phraseAt(talk, clause, i);
}

const hindrances =
  /^(?:wind|winds|windy|gusting|gusts|blowing|breezy|rain|raining|rainy|snow|snowing|storm|weather|room|space|tree|trees|branch|branches|wall|building|fence|dark|parked|power|tight|close)$/;
/** "I couldn't get the awning out because of the wind", "too windy": nothing failed, it was not tried. */
function isHindered(talk: Talk, clause: Clause, from: number): boolean {
  const { words, sentenceOf } = talk.marks;
  let reason = false;
  for (let k = from; k < words.length && k - from < 16 && sentenceOf[k] === clause.sentence; k++) {
    const n = words[k]?.norm ?? '';
    if (/^(?:because|'cause|cause|since|for|too|with|no|not|it's|in)$/.test(n)) reason = true;
    if (reason && hindrances.test(n)) return true;
  }
  return false;
}

function deniedVerbAt(talk: Talk, clause: Clause, i: number): UnknownHit | undefined {
  const { words } = talk.marks;
  const norm = (k: number): string => (k >= clause.from && k < clause.to ? (words[k]?.norm ?? '') : '');
  const deny = deniers.at(words, i);
  const forms = deny?.values[0];
  if (!deny || !forms || i + deny.length > clause.to) return undefined;
  const said = norm(i);
  if ((talk.scopes.elsewhere[i] === 1 && !/^no/.test(said)) || (/^no/.test(said) && norm(i - 1) === "don't"))
    return undefined;
  if (/^no(?:body)?$/.test(said) && said !== 'no' && (i - clause.from > 3 || elsewhereBefore(talk, clause)))
    return undefined;
  let k = i + deny.length;
  if (/^(?:have|need|got)$/.test(norm(k)) && norm(k + 1) === 'to') return undefined;
  let chance = false;
  const limit = k + 7;
  let verb = verbAt(norm(k), forms);
  while (k < limit && between.has(norm(k))) {
    const n = norm(k);
    // "haven't had it on", "didn't get those": the helping word is the verb where an object follows
    if (
      verb?.kind === 'weak' &&
      objectAt(talk, clause, k + 1) &&
      !/^(?:chance|time|opportunity|moment|occasion|good|day)$/.test(norm(k + 2))
    )
      break;
    if (
      /^(?:chance|chances|time|around|opportunity|moment|occasion)$/.test(n) ||
      (n === 'to' && /^(?:get|got|gotten|getting|went)$/.test(norm(k - 1)))
    )
      chance = true;
    k++;
    const loose: readonly Form[] =
      norm(k - 1) === 'to'
        ? ['base']
        : /^(?:been|had|have|got|gotten|was|were)$/.test(norm(k - 1))
          ? ['past', 'ing', 'base']
          : forms;
    verb =
      verbAt(norm(k), loose) ??
      (n === 'load' || n === 'pressure' || n === 'leak' ? verbAt(norm(k), ['past', 'base']) : undefined);
  }
  // "haven't been up on the roof", "nobody 's been under there"
  if (
    !verb &&
    norm(k - 1) === 'been' &&
    /^(?:up|under|underneath|inside|over|on|behind|through|down|in|to)$/.test(norm(k)) &&
    (subject(talk, clause, i) || /^no/.test(said))
  )
    return { from: i, to: k + 1, why: 'not tried', verb: 'climb', general: false };
  // "the roof I did not go up", "I couldn't get under it"
  if (
    !verb &&
    /^(?:get|go|gone|gotten|got)$/.test(norm(k - 1)) &&
    /^(?:up|under|underneath|inside|behind)$/.test(norm(k)) &&
    subject(talk, clause, i) &&
    (k + 1 === clause.to || /^(?:there|the|it|that|under|on|my|because|so)$/.test(norm(k + 1)))
  )
    return { from: i, to: k + 1, why: 'not tried', verb: 'climb', general: false };
  // "didn't get to it", "haven't had the time": no verb, but the reason says it all
  if (!verb)
    return chance && /^(?:to|time|chance|around)$/.test(norm(k - 1))
      ? { from: i, to: Math.min(k + 1, clause.to), why: 'not tried', verb: 'get to', general: false }
      : undefined;
  const end = k + 1;
  // "didn't get up on the roof", "I couldn't go under it"
  const who = subject(talk, clause, i);
  if (
    /^(?:get|go|climb|crawl)$/.test(verb.base) &&
    /^(?:up|on|onto|under|underneath|inside|into|behind|over|beneath|all|back)$/.test(norm(end)) &&
    /^(?:on|onto|the|there|under|it|that|in|this|my|them|behind|to|)$/.test(norm(end + 1)) &&
    (who || (i === clause.from && verb.base !== 'go'))
  )
    return { from: i, to: end, why: 'not tried', verb: 'climb', general: false };
  // "not one tile", "not only": a bare "not" denies the word right behind it
  if (said === 'not' && deny.length === 1 && k > i + 1 && norm(k - 1) !== 'been' && norm(k - 1) !== 'load')
    return undefined;
  if (verb.base === 'get' && /^(?:any|better|much|worse|hot|cold|warm|enough)$/.test(norm(end)))
    return undefined;
  if (isHarmless(talk, clause, i, k, verb.base)) return undefined;
  if (ingVerbs[norm(k)] && /^(?:call|count|get|have|do|go|say|know|take|put)$/.test(verb.base))
    return undefined;
  const toTry = norm(k - 1) === 'to';
  const passive =
    /^(?:been|was|were|wasn't|weren't|is|isn't|are|aren't|not|'s)$/.test(norm(k - 1)) ||
    /^(?:was|were|is|are)$/.test(norm(i));
  const thing = !who && i > clause.from;
  // "the icemaker is not hooked up" says how it is
  if (passive && !who && verb.base === 'hook') return undefined;
  if (forms.includes('ing') && said === 'not' && !who && ingVerbs[norm(k)]) return undefined;
  if (/^(?:leave|wait)$/.test(verb.base) && !words.slice(end, clause.to).some((w) => w.norm === 'enough'))
    return undefined;
  // "I could not light it" tried and failed; "I can't start it today" did not try
  if (
    /^(?:can|could|cannot|cant|couldnt|unable)/.test(said) &&
    /^(?:light|start|fire|open|close|turn|crank|lower|raise|level|deploy|extend|unroll|roll|retract|remove|pull|push|flip|cycle|spin|get|jack|lift|swing|hook)$/.test(
      verb.base,
    ) &&
    !words
      .slice(end, clause.to)
      .some((w) =>
        /^(?:today|here|because|without|since|until|inside|alone|gauge|chuck|meter|light|camera|hand|head|thermometer|it_)$/.test(
          w.norm,
        ),
      ) &&
    !isHindered(talk, clause, end)
  )
    return undefined;
  if (
    (said === 'not' || /^(?:going|gonna)$/.test(norm(i + deny.length - 1)) || norm(i + 1) === 'going') &&
    verb.kind === 'know'
  )
    return undefined;
  if (verb.kind === 'weak') {
    // "it's not gonna run your air conditioner": a thing is spoken of
    if (
      /^(?:it|that|this|which|they)$/.test(norm(i - 1)) ||
      (/^(?:'s|'re|is)$/.test(norm(i - 1)) && /^(?:it|that|this|they)$/.test(norm(i - 2)) && !passive)
    )
      return undefined;
    const object = objectAt(talk, clause, end);
    const noun = /^(?:no|nobody|forgot|forgotten|neglected|yet|still)$/.test(said);
    if (
      !(
        who ||
        noun ||
        toTry ||
        (object && said !== "don't") ||
        (passive &&
          /^(?:run|drive|open|light|fire|pull|do|take|use|weigh|clean|fill|load|turn|hook|power|start|deploy|extend|remove)$/.test(
            verb.base,
          ))
      )
    )
      return undefined;
    if (
      passive &&
      !who &&
      verb.base === 'run' &&
      said !== 'not' &&
      said !== 'never' &&
      !/^(?:haven't|hasn't)$/.test(said)
    )
      return undefined;
    // "haven't had it on", never "never had a leak"
    if (
      verb.base === 'have' &&
      (norm(end) === 'a' ||
        norm(end) === 'any' ||
        norm(end) === 'an' ||
        !words.slice(end, Math.min(clause.to, end + 5)).some((w) => particle.test(w.norm)))
    )
      return undefined;
    // "I don't have a spare": there is none; "we don't use it": no finding
    if (verb.base === 'have' && /^(?:don't|do|didn't|dont)$/.test(said)) return undefined;
    if (
      /^(?:won't|will|wouldn't|would|don't|do)$/.test(said) &&
      !(who && /^(?:touch|run|open|light|take|turn|fire)$/.test(verb.base))
    )
      return undefined;
  } else if (verb.kind === 'know' || verb.kind === 'look') {
    // "don't tell her", "never said a word": only who cannot say does not know
    if (
      /^(?:tell|say|speak|vouch|swear|promise|guarantee|confirm)$/.test(verb.base) &&
      !toTry &&
      !/^(?:can|could|cannot|cant|couldnt|would|won't|will|unable|not$|haven)/.test(said)
    )
      return undefined;
    if (said === 'not' && /^(?:tell|say|speak|know)$/.test(verb.base)) return undefined;
    if (
      /^(?:won't|will|wouldn't|would)$/.test(said) &&
      !/^(?:know|swear|vouch|speak|promise|guarantee)$/.test(verb.base)
    )
      return undefined;
    if (
      thing &&
      !toTry &&
      !passive &&
      who === undefined &&
      !/^(?:can't|couldn't|cannot|can|could|dunno|don't|never|not|unable|to)/.test(said)
    )
      return undefined;
  } else if (
    thing &&
    !passive &&
    /^(?:touch|hook|climb|scan|check|test|look|probe)$/.test(verb.base) &&
    /^(?:doesn't|does|won't|will)$/.test(said)
  )
    return undefined;
  if (/^(?:don't|do)$/.test(said) && i === clause.from && verb.kind !== 'know') return undefined;
  const general =
    verb.kind === 'know' && !/^(?:vouch|speak|swear|promise|guarantee|confirm)$/.test(verb.base);
  return { from: i, to: end, why: whyOf[verb.kind], verb: verb.base, general };
}

const elsewhereBefore = (talk: Talk, clause: Clause): boolean =>
  clause.from > 0 &&
  talk.marks.sentenceOf[clause.from - 1] === clause.sentence &&
  talk.scopes.elsewhere[clause.from - 1] === 1;

const verbAt = (norm: string, forms: readonly Form[]): { kind: VerbClass; base: string } | undefined =>
  (forms.includes('past') ? pastVerbs[norm] : undefined) ??
  (forms.includes('base') ? baseVerbs[norm] : undefined) ??
  (forms.includes('ing') ? ingVerbs[norm] : undefined);

/** A person said right before the denial. */
function subject(talk: Talk, clause: Clause, i: number): string | undefined {
  for (let k = i - 1; k >= Math.max(clause.from, i - 4); k--) {
    const n = talk.marks.words[k]?.norm ?? '';
    if (people.has(n)) return n === 'they' ? undefined : n;
    if (
      !/^(?:just|really|honestly|have|has|'ve|'s|was|were|did|am|'m|'re|also|still|and|so|personally)$/.test(
        n,
      )
    )
      return undefined;
  }
  return undefined;
}

/** An object begins at `k`: a pronoun, or a named thing after an article. */
function objectAt(talk: Talk, clause: Clause, k: number): boolean {
  const n = k < clause.to ? (talk.marks.words[k]?.norm ?? '') : '';
  return pronouns.has(n) || articles.has(n) || (n !== '' && clause.mentions.some((m) => m.from === k));
}
