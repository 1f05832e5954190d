// Why: failure words, work verbs and good words all end in the same kind of observation, made in one place.
import type { State } from '../../catalogue/state.ts';
import type { Clause, Draft } from './clause.ts';
import { verbs } from './lexicon.ts';
import type { Talk } from './talk.ts';

/** What is concluded about one part in a clause. */
export interface Verdict {
  readonly part: string;
  readonly aspect: string;
  readonly state: State;
  readonly sense: Draft['sense'];
  readonly polarity: Draft['polarity'];
  readonly weight: number;
}

/** The observation of a verdict that turns on the words `at`..`at + length`; marks them as taken. */
export function draftOf(
  talk: Talk,
  clause: Clause,
  taken: Uint8Array,
  v: Verdict,
  at: number,
  length: number,
): Draft {
  const place = talk.placeOf(v.part, at, clause);
  const doubt = talk.doubtAt(at);
  taken.fill(1, at, at + length);
  return {
    part: v.part,
    ...(place === undefined ? {} : { place }),
    aspect: v.aspect,
    value: { is: 'state', state: v.state },
    sense: v.sense,
    polarity: v.polarity,
    ...doubt,
    from: Math.max(clause.from, at - 7),
    to: Math.min(clause.to, at + length + 5),
    at,
    weight: doubt.hedged ? v.weight - 0.15 : v.weight,
  };
}

const negative = new Set(
  "not never no won't wont don't doesn't doesnt isn't aren't can't cannot didn't wouldn't couldn't wasn't nor nothing none neither without".split(
    ' ',
  ),
);

/** How many words before `i` in the clause a denial stands, up to four; undefined where none does. */
export function denialBefore(talk: Talk, clause: Clause, i: number): number | undefined {
  for (let k = i - 1; k >= Math.max(clause.from, i - 4); k--) {
    const n = talk.marks.words[k]?.norm ?? '';
    if (negative.has(n)) return i - k;
    if (
      verbs.at(talk.marks.words, k) &&
      !clause.mentions.some((m) => m.from <= k && k < m.to) &&
      !/^(?:come|go|been|getting|get|stay)$/.test(n)
    )
      return undefined;
  }
  return undefined;
}

/** The part a word at `i` is said of: named before it in the clause, or what the talk is about. */
export function subjectOf(talk: Talk, clause: Clause, i: number): string | undefined {
  const before = clause.mentions.filter((m) => !m.aside && m.to <= i);
  const named = before.filter((m) => !m.weak).at(-1) ?? before.at(-1);
  return named?.parts[0] ?? talk.partFor(i, i + 1, clause);
}
