// Why: a bare number is a reading only where no other noun follows it, and a year is no reading.
import type { Clause } from './clause.ts';
import { defectPhrases, goodPhrases, typePhrases } from './lexicon.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';

/** What may follow a reading that has no unit: nothing, or a small word. "Two owners" is no reading. */
const small =
  /^(?:and|or|but|on|in|at|of|to|up|down|by|for|with|from|the|so|then|that|which|it|i|we|is|was|as|if|when|out|all|both|each|cold|over|under|total|per|now|right|here|there|this|there's|after|before|inside|outside|full|empty|resting|today|exactly|even|flat|max|instead|too|also|again|still|ish|maybe|a|an|where|because|since|he|they|you|we|'s|no|not|left|front|rear|only|at|across|along|around|behind|near|towards|driver|passenger|amp)$/;
const closing =
  /^(?:apiece|each|combined|hot|loaded|unloaded|rested|resting|roughly|about|probably|thereabouts|steady|almost|approximately|around|idling|running|solid|i|they|okay|good)$/;
/** True when nothing stands behind the number that it counts. */
export const endsPhrase = (talk: Talk, span: NumberSpan): boolean => {
  const { words, numberAt, mentionAt, placeAt } = talk.marks;
  const next = words[span.to];
  if (!next || (words[span.to - 1]?.stop ?? 2) > 0) return true;
  return (
    small.test(next.norm) ||
    closing.test(next.norm) ||
    typePhrases.at(words, span.to) !== undefined ||
    defectPhrases.at(words, span.to) !== undefined ||
    goodPhrases.at(words, span.to) !== undefined ||
    numberAt.from(span.to) !== undefined ||
    mentionAt.from(span.to) !== undefined ||
    placeAt.from(span.to) !== undefined
  );
};
/** "2005", "twenty eighteen": as bare words these are years. */
export const looksLikeYear = (span: NumberSpan): boolean => {
  const [a, b] = span.items;
  const year = span.readings[0]?.value ?? 0;
  if (span.unit || !Number.isInteger(year) || year < 1975 || year > 2035) return false;
  return span.items.length === 1
    ? a?.written !== undefined && a.written.length === 4
    : span.items.length <= 3 && b !== undefined && (a?.value === 20 || a?.value === 19);
};

const isInOut = (n: string | undefined): boolean => n === 'in' || n === 'out';
/** The number that an "in" or "out" belongs to: "seventy-five in and sixty-four out", but "out thirty-nine in forty-four". */
export function inOutOwner(talk: Talk, at: number): NumberSpan | undefined {
  const { words, numberAt } = talk.marks;
  const before = words[at - 1]?.stop === 0 ? numberAt.to(at) : undefined;
  const lead = before && words[before.from - 1];
  if (!before || (lead?.stop === 0 && isInOut(lead.norm))) return undefined;
  const next = words[at + 1]?.norm ?? '';
  return (words[at]?.stop ?? 2) > 0 || next === '' || next === 'and' ? before : undefined;
}

/** The failure named right before the number in its own clause, and the part it is of. */
export function faultIn(
  talk: Talk,
  clause: Clause,
  span: NumberSpan,
): { readonly part: string; readonly at: number } | undefined {
  for (let i = span.from - 1; i >= clause.from && span.from - i <= 9; i--) {
    const hit = defectPhrases.at(talk.marks.words, i);
    if (!hit || talk.scopes.denied[i] === 1 || clause.mentions.some((m) => m.from <= i && m.to > i)) continue;
    const part = talk.partFor(i, i + hit.length, clause);
    return part ? { part, at: i } : undefined;
  }
  return undefined;
}
