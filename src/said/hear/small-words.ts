// Why: small words of other languages (an adverb behind its verb, a comma in a number, "from left") are put as English has them.
import { baseOf, workedBases } from './loan-words.ts';
import { digitsValue, ones, teens, tens } from './number-words.ts';
import { formsOf } from './verb-forms.ts';
import type { Word } from './word.ts';

/** Words that stand for others: how many they replace, and what is said instead. */
export interface Instead {
  readonly length: number;
  readonly norms: readonly string[];
  /** A sentence begins here. */
  readonly ends?: true;
}

export const articles = /^(?:the|a|an|my|his|her|its|your|this|that)$/;
const isDigit = (n: string): boolean => Object.hasOwn(ones, n) || /^\d$/.test(n);
const isNumber = (n: string): boolean =>
  Object.hasOwn(ones, n) || Object.hasOwn(teens, n) || Object.hasOwn(tens, n) || digitsValue(n) !== undefined;
/** Verbs of work by their form with -ing. */
export const ofLasting: ReadonlyMap<string, string> = new Map(
  [...workedBases].flatMap((v) => formsOf(v).flatMap(([f, as]) => (as === 'ing' ? [[f, v] as const] : []))),
);

/** "Shows always full", "starts never cold": the adverb stands before the verb. */
export function adverbBehind(words: readonly Word[], i: number): Instead | undefined {
  const verb = words[i];
  const adverb = words[i + 1];
  if (
    !verb ||
    !adverb ||
    verb.stop > 0 ||
    !/^(?:always|never|sometimes|also|only|still|already)$/.test(adverb.norm)
  )
    return undefined;
  if (!baseOf.has(verb.norm) && !/^(?:reads|says|indicates|comes|falls|sticks)$/.test(verb.norm))
    return undefined;
  const next = adverb.stop === 0 ? (words[i + 2]?.norm ?? '') : '';
  return next === '' || /^(?:the|a|when|if|one|two|three|that|to)$/.test(next)
    ? undefined
    : { length: 2, norms: [adverb.norm, verb.norm] };
}

/** "The mirror from left", "plug in the kitchen": a place or a room that says which one. */
export function fromSide(words: readonly Word[], i: number): Instead | undefined {
  const w = words[i];
  if (!w || w.stop > 0) return undefined;
  const at = articles.test(words[i + 1]?.norm ?? '') ? i + 2 : i + 1;
  const next = words[at]?.norm ?? '';
  if (w.norm === 'from' && /^(?:left|right)$/.test(next) && at === i + 1 && i > 0 && words[i - 1]?.stop === 0)
    return /^(?:to|side)$/.test(words[at + 1]?.norm ?? '') ? undefined : { length: 1, norms: ['on'] };
  if (
    /^plugs?$/.test(w.norm) &&
    /^(?:in|at|of|from|by|beside|near)$/.test(words[i + 1]?.norm ?? '') &&
    words
      .slice(i + 2, i + 5)
      .some((x) =>
        /^(?:kitchen|bathroom|bath|bedroom|living|wall|dinette|galley|sofa|salon|sleeping|bed|toilet|table)$/.test(
          x.norm,
        ),
      )
  )
    return { length: 1, norms: [w.norm === 'plug' ? 'outlet' : 'outlets'] };
  return undefined;
}

/** "Closes complete", "from the year 2018", "all the plugs", "two pieces": small words of other languages. */
export function smallWord(words: readonly Word[], i: number): Instead | undefined {
  const n = words[i]?.norm ?? '';
  const before = i > 0 && words[i - 1]?.stop === 0 ? (words[i - 1]?.norm ?? '') : '';
  const next = words[i]?.stop === 0 ? (words[i + 1]?.norm ?? '') : '';
  if (
    /^(?:complete|perfect|correct)$/.test(n) &&
    (baseOf.has(before) || workedBases.has(before) || ofLasting.has(before))
  )
    return { length: 1, norms: [`${n}ly`] };
  if (/^(?:from|of)$/.test(n) && before !== '') {
    const at = next === 'the' ? i + 2 : i + 1;
    const year = words[at + 1]?.norm ?? '';
    if (
      words[at]?.norm === 'year' &&
      words[at]?.stop === 0 &&
      (isNumber(year) || year === 'two') &&
      !/^(?:model|the)$/.test(before)
    )
      return { length: at - i + 1, norms: ['from'] };
  }
  if (
    n === 'from' &&
    isNumber(before) &&
    isNumber(next) &&
    !/^(?:is|are|it)$/.test(words[i - 2]?.norm ?? '') &&
    Object.hasOwn(ones, before)
  )
    return { length: 1, norms: ['of'] };
  if (n === 'plugs' && (before === 'all' || (before === 'the' && words[i - 2]?.norm === 'all')))
    return { length: 1, norms: ['outlets'] };
  if (
    /^(?:pieces|pcs|items)$/.test(n) &&
    isNumber(before) &&
    (next === '' || /^(?:of|and|all|each|in|on)$/.test(next)) &&
    !words.slice(Math.max(0, i - 4), i).some((w) => w.norm === 'in')
  )
    return { length: 1, norms: ['total'] };
  return undefined;
}

/** "Twelve comma six" is a decimal; three digits behind the comma are those of a thousand. */
export function commaSaid(words: readonly Word[], i: number): Instead | undefined {
  if (
    words[i]?.norm !== 'comma' ||
    !isNumber(words[i - 1]?.norm ?? '') ||
    !isNumber(words[i + 1]?.norm ?? '')
  )
    return undefined;
  let digits = 0;
  while (isDigit(words[i + 1 + digits]?.norm ?? '') && (digits === 0 || words[i + digits]?.stop === 0))
    digits++;
  return { length: 1, norms: digits === 3 ? [] : ['point'] };
}
