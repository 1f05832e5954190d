// Why: which part a number is of where "it" stands for it, where another is only the load, or where a failure is measured.
import type { Clause } from './clause.ts';
import type { Mention } from './mention.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';
import type { SaidUnit } from './unit-words.ts';

/** The first word of the clause's sentence, not far back. */
export function sentenceStart(talk: Talk, clause: Clause): number {
  let i = clause.from;
  while (i > 0 && clause.from - i < 14 && talk.marks.sentenceOf[i - 1] === clause.sentence) i--;
  return i;
}
/** "A bubble ten by six": two bare numbers right behind a failure are inches of it. */
export const sizeOfFault = (talk: Talk, span: NumberSpan): SaidUnit | undefined =>
  span.by !== undefined &&
  talk.fault !== undefined &&
  span.from - talk.fault.at <= 6 &&
  (span.readings[0]?.value ?? 99) <= 60
    ? { units: ['[in_i]'], times: 1 }
    : undefined;

/** True when any part was named between two words. */
export const namedBetween = (talk: Talk, from: number, to: number): boolean => {
  for (let i = from; i < to; i++) if (talk.marks.mentionAt.from(i)) return true;
  return false;
};

/** What was named in the clause's sentence up to its end. */
export const sentenceMentions = (talk: Talk, clause: Clause): Mention[] => {
  const out: Mention[] = [];
  for (let i = sentenceStart(talk, clause); i < clause.to; i++) {
    const m = talk.marks.mentionAt.from(i);
    if (m && !m.aside) out.push(m);
  }
  return out;
};

/** True where "it" right before the measuring words means something named before the clause: "with a burner lit it holds". */
export function refersBack(talk: Talk, clause: Clause, start: number, at: number): boolean {
  const { words } = talk.marks;
  const opening = sentenceStart(talk, clause);
  const lead = /^(?:and|so|then|but|now|okay)$/.test(words[opening]?.norm ?? '') ? opening + 1 : opening;
  // "with both airs running, one eighteen volts": the airs are only what it was tested with
  if (
    clause.mentions.length === 0 &&
    clause.from > lead + 1 &&
    /^(?:with|without|under)$/.test(words[lead]?.norm ?? '')
  )
    return true;
  // "both airs on, one sixteen": they are the load, not what is read
  const last = clause.mentions.filter((m) => m.to <= at).at(-1);
  if (
    last &&
    /^(?:on|running|going|off|lit|open)$/.test(words[last.to]?.norm ?? '') &&
    at - last.to <= 2 &&
    (last.to + 1 === at ||
      (words[last.to]?.stop ?? 0) > 0 ||
      /^(?:it|i|she)$/.test(words[at - 1]?.norm ?? ''))
  )
    return true;
  const first = clause.mentions.find((m) => !m.aside);
  if (!first || (first.from >= start && first.to > start)) return false;
  let it = -1;
  for (let i = Math.max(start, first.to); i < at && it < 0; i++)
    if (/^(?:it|she|he)$/.test(words[i]?.norm ?? '')) it = i;
  if (it < 0) return false;
  for (let i = sentenceStart(talk, clause); i < first.from; i++)
    if (/^(?:with|without|under)$/.test(words[i]?.norm ?? '')) return true;
  return false;
}
