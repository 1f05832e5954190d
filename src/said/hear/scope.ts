// Why: whether a word is denied, guessed, hearsay, supposed or about another coach is decided by triggers and how far they reach.
import { deniedIn, ownDenials } from './denial.ts';
import { elsewhereIn } from './elsewhere.ts';
import { hearsayAt } from './hearsay.ts';
import type { Marks } from './marks.ts';
import { questionsIn } from './questions.ts';
import { guesses } from './trigger-words.ts';

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
  const elsewhere = elsewhereIn(marks);
  const saidBy: (string | undefined)[] = new Array(n).fill(undefined);
  const clauseStart = (i: number): number => {
    let k = i;
    while (k > 0 && clauseOf[k - 1] === clauseOf[i]) k--;
    return k;
  };
  for (let i = 0; i < n; i++) {
    const guess = guesses.at(words, i);
    if (guess && !isOther(words, i)) {
      for (let k = clauseStart(i); k < n && clauseOf[k] === clauseOf[i]; k++) guessed[k] = 1;
    }
    const said = hearsayAt(words, i);
    if (said) {
      // "they were replaced last year, he says": the clause before belongs to it where nothing follows
      const ends = (words[i + said.length - 1]?.stop ?? 2) > 0 || clauseOf[i + said.length] !== clauseOf[i];
      const behind = ends && i > 0 && sentenceOf[clauseStart(i) - 1] === sentenceOf[i];
      const next = (clauseOf[i] ?? 0) + (behind ? 0 : 1);
      for (
        let k = clauseStart(i);
        k < n && sentenceOf[k] === sentenceOf[i] && (clauseOf[k] ?? 0) <= next;
        k++
      )
        saidBy[k] = said.by;
      if (ends)
        for (
          let k = i - 1;
          k >= 0 && sentenceOf[k] === sentenceOf[i] && (clauseOf[k] ?? 0) >= (clauseOf[i] ?? 0) - 1;
          k--
        )
          saidBy[k] = said.by;
    }
  }
  questionsIn(marks, elsewhere, denied);
  return { denied, guessed, elsewhere, saidBy };
}

/** "Some kind of", "they call it": no guess. */
const isOther = (words: Marks['words'], i: number): boolean =>
  (/^(?:kind|sort)$/.test(words[i]?.norm ?? '') &&
    /^(?:some|what|this|that|any|one|every)$/.test(words[i - 1]?.norm ?? '')) ||
  (words[i]?.norm === 'call' && /^(?:they|we|you|i|to|folks)$/.test(words[i - 1]?.norm ?? ''));
