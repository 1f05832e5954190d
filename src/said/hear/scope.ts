// Why: whether a word is denied, guessed, hearsay, supposed or about another coach is decided by triggers and how far they reach.
import { deniedIn, ownDenials } from './denial.ts';
import type { Marks } from './marks.ts';
import { itemAt } from './number-item.ts';
import {
  conditions,
  estimates,
  guesses,
  hearsay,
  hypothetical,
  otherCoach,
  stories,
} from './trigger-words.ts';

/** What holds for each word. */
export interface Scopes {
  readonly denied: Uint8Array;
  readonly guessed: Uint8Array;
  /** No fact of this coach: 1 about another coach or coaches in general, 2 supposed and not so. */
  readonly elsewhere: Uint8Array;
  readonly saidBy: readonly (string | undefined)[];
}

/** Works out the scopes of a marked stream. Linear in its length. */
export function scopesOf(marks: Marks): Scopes {
  const { words, clauseOf, sentenceOf } = marks;
  const n = words.length;
  const denied = deniedIn(marks, ownDenials);
  const guessed = new Uint8Array(n);
  const elsewhere = new Uint8Array(n);
  const saidBy: (string | undefined)[] = new Array(n).fill(undefined);
  const clauseStart = (i: number): number => {
    let k = i;
    while (k > 0 && clauseOf[k - 1] === clauseOf[i]) k--;
    return k;
  };
  const mark = (from: number, of: number, kind: 1 | 2): void => {
    for (let k = from; k < n && clauseOf[k] === clauseOf[of]; k++)
      if (elsewhere[k] !== 1) elsewhere[k] = kind;
  };
  for (let i = 0; i < n; i++) {
    const guess = guesses.at(words, i);
    if (guess) {
      for (let k = clauseStart(i); k < n && clauseOf[k] === clauseOf[i]; k++) guessed[k] = 1;
    }
    const said = hearsay.at(words, i);
    if (said) {
      const next = (clauseOf[i] ?? 0) + 1;
      // "they were replaced last year, he says": the clause before belongs to it where nothing follows
      const ends = (words[i + said.length - 1]?.stop ?? 2) > 0 || clauseOf[i + said.length] !== clauseOf[i];
      for (
        let k = clauseStart(i);
        k < n && sentenceOf[k] === sentenceOf[i] && (clauseOf[k] ?? 0) <= next;
        k++
      )
        saidBy[k] = said.values[0];
      if (ends)
        for (
          let k = i - 1;
          k >= 0 && sentenceOf[k] === sentenceOf[i] && (clauseOf[k] ?? 0) >= (clauseOf[i] ?? 0) - 1;
          k--
        )
          saidBy[k] = said.values[0];
    }
    const story = stories.at(words, i);
    if (story && !endsInNumber(words, i + story.length - 1)) {
      for (let k = clauseStart(i); k < n && sentenceOf[k] === sentenceOf[i]; k++) elsewhere[k] = 1;
    }
    const estimate = estimates.at(words, i);
    if (estimate) {
      i += estimate.length - 1;
      continue;
    }
    const order = words[i]?.norm === "don't" && clauseStart(i) === i;
    if (otherCoach.at(words, i)) mark(clauseStart(i), i, 1);
    else if (order || hypothetical.at(words, i)) mark(clauseStart(i), i, 2);
    else if (conditions.at(words, i)) mark(i, i, 2);
  }
  for (let i = 0; i < n; i++) {
    if (!words[i]?.asks) continue;
    // a question is no finding; of "it's dry, see that?" only the tag is one
    const tag = clauseStart(i);
    const isTag = i - tag < 3 && tag > 0 && sentenceOf[tag - 1] === sentenceOf[i];
    for (let k = i; k >= (isTag ? tag : 0) && sentenceOf[k] === sentenceOf[i]; k--)
      if (!elsewhere[k]) elsewhere[k] = 2;
  }
  return { denied, guessed, elsewhere, saidBy };
}

/** "I had one seventeen volts": the "one" belongs to a number. */
const endsInNumber = (words: Marks['words'], i: number): boolean =>
  words[i]?.norm === 'one' && words[i]?.stop === 0 && itemAt(words, i + 1) !== undefined;
