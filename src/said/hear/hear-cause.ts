// Why: a guess at the reason of something wrong is no finding; it is kept as unknown, of the part that failed.
import type { Clause, Draft } from './clause.ts';
import { guessAlone, guessBefore, noReason } from './guess-words.ts';
import type { Talk } from './talk.ts';

/** How many words after a failure a reason for it is still given. */
const reach = 34;

/** The failure a reason would be for. */
function faultOf(
  talk: Talk,
  clause: Clause,
  last: Draft | undefined,
): { part: string; place?: string; at: number } | undefined {
  const fault = last && (last.sense === 'defect' || last.sense === 'unknown') ? last : talk.fault;
  if (!fault || clause.from - fault.at > reach) return undefined;
  // another thing was named since: the guess is not of this failure any more
  const named = talk.recent.find((r) => !r.weak && r.at < clause.from);
  return named && named.at > fault.at + 4 && !named.parts.includes(fault.part) ? undefined : fault;
}

const be =
  /^(?:is|are|was|were|has|have|had|'s|'re|'ve|looks|feels|needs|wants|got|works|does|do|did|runs|goes|keeps)$/;
const leads = /^(?:it|that|this|they|which|and|or|so|but|i|these|those|'s|just|well|okay|now|uh|um|either)$/;

/** Where in a clause the guess is said; undefined where the clause is none. */
export function guessAt(talk: Talk, clause: Clause): number | undefined {
  const { words, clauseOf } = talk.marks;
  const norm = (k: number): string => (k < clause.to ? (words[k]?.norm ?? '') : '');
  const length = clause.to - clause.from;
  if (length > 15 || clause.numbers.length > 0 || norm(clause.from) === 'there') return undefined;
  // "blown fuse, could be": the next clause is nothing but the guess
  const after = guessAlone.at(words, clause.to);
  const alone =
    after !== undefined &&
    clause.to < words.length &&
    talk.marks.sentenceOf[clause.to] === clause.sentence &&
    clauseOf[clause.to + after.length] !== clauseOf[clause.to];
  const verb = (from: number, to: number): boolean => words.slice(from, to).some((w) => be.test(w.norm));
  const named =
    /^(?:it|that|this)$/.test(norm(clause.from)) && /^(?:'s|is|'d|would)$/.test(norm(clause.from + 1));
  if (alone && length <= 8 && (!verb(clause.from, clause.to) || named)) return clause.from;
  // "that's the motor or the switch"
  if (
    named &&
    length <= 11 &&
    words.slice(clause.from + 2, clause.to).some((w) => w.norm === 'or') &&
    /^(?:the|a|an|your|either)$/.test(norm(clause.from + 2)) &&
    !verb(clause.from + 2, clause.to)
  )
    return clause.from;
  if (
    named &&
    /^(?:'d|would)$/.test(norm(clause.from + 1)) &&
    norm(clause.from + 2) === 'be' &&
    /^(?:the|a|an|your)$/.test(norm(clause.from + 3))
  )
    return clause.from;
  for (let i = clause.from; i < clause.to; i++) {
    const hit = guessBefore.at(words, i);
    if (!hit || i + hit.length > clause.to || talk.scopes.elsewhere[i] === 1) continue;
    const end = i + hit.length;
    if (end === clause.to) {
      // "low battery I guess": a bare thing, and the guess behind it
      if (
        i > clause.from &&
        i - clause.from <= 6 &&
        !verb(clause.from, i) &&
        !/^(?:from|at|in|on|by)$/.test(norm(clause.from))
      )
        return i;
      const thing = named && /^(?:a|an|the|your|just)$/.test(norm(clause.from + 2));
      if (i > clause.from + 2 && thing && i - clause.from <= 6) return i;
      // "could be": alone, of what stood before
      return i === clause.from && /^(?:could|might|may)/.test(norm(i)) ? i : undefined;
    }
    let k = i - 1;
    while (k >= clause.from && leads.test(norm(k))) k--;
    if (k >= clause.from) return undefined;
    if (
      noReason.has(norm(end)) ||
      norm(end) === 'of' ||
      (/^(?:must|has|have|ought|should)/.test(norm(i)) && /(?:ed|en|one)$/.test(norm(end))) ||
      (norm(end) === 'a' && /^(?:little|bit|hair|tad)$/.test(norm(end + 1)))
    )
      return undefined;
    return i;
  }
  return undefined;
}

/** A guess at the reason of something wrong: "could be the seal". Marks the clause as taken. */
export function hearCause(talk: Talk, clause: Clause, last: Draft | undefined, taken: Uint8Array): Draft[] {
  const fault = faultOf(talk, clause, last);
  if (!fault) return [];
  const at = guessAt(talk, clause);
  if (at === undefined) return [];
  if (talk.marks.words.slice(at, clause.to).some((w) => w.norm === 'reason')) return [];
  taken.fill(1, clause.from, clause.to);
  // "could be the bearing, could be the tires": one guess
  if (talk.guessed && talk.guessed.part === fault.part && clause.from - talk.guessed.at < 20) return [];
  talk.guessed = { part: fault.part, at };
  return [
    {
      part: fault.part,
      ...(fault.place === undefined ? {} : { place: fault.place }),
      aspect: 'cause',
      value: { is: 'unknown', why: 'a guess at the cause' },
      sense: 'unknown',
      polarity: 'neutral',
      hedged: true,
      from: clause.from,
      to: clause.to,
      at,
      weight: 0.6,
    },
  ];
}
