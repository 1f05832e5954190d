// Why: how far a denial reaches is one algorithm, so that it can be measured on other people's sentences with other triggers.
// The method of trigger and scope is NegEx (Chapman et al. 2001).
import type { Marks } from './marks.ts';
import type { PhraseIndex } from './phrase-index.ts';
import { denyAfter, denyBefore, notDenial, scopeEnds } from './trigger-words.ts';

/** Phrases that deny what follows, what stands before, that only look like a denial, and that end its reach. */
export interface Denials {
  readonly before: PhraseIndex<true>;
  readonly after: PhraseIndex<true>;
  readonly pseudo: PhraseIndex<true>;
  readonly ends: PhraseIndex<true>;
  /** How many words a denial reaches at most. */
  readonly reach: number;
  /** A list after a denial is denied to its end, whatever its length ("no A, B or C"). */
  readonly lists?: true;
  /** A denial may stand alone behind what it denies ("smell of smoke, none"), and what would cure a failure leaves it there. */
  readonly talk?: true;
}

/** The triggers of the trade. */
export const ownDenials: Denials = {
  before: denyBefore,
  after: denyAfter,
  pseudo: notDenial,
  ends: scopeEnds,
  reach: 9,
  talk: true,
};

/** Denied, these leave the failure where it is: "they never fixed the leak". */
const cures =
  /^(?:fix|fixed|fixing|repair|repaired|patch|patched|stop|stopped|stopping|cure|cured|mend|mended|replace|replaced|address|addressed|touch|touched|hide|hides|hid|tell|told|mention|mentioned|bother|bothers|mind|care|matter|know|like|love|trust|understand)$/;

/** For each word 1 where it is denied. Linear in the length of the stream. */
export function deniedIn(marks: Marks, by: Denials): Uint8Array {
  const { words, clauseOf, sentenceOf } = marks;
  const n = words.length;
  const denied = new Uint8Array(n);
  for (let i = 0; i < n; i++) {
    const pseudo = by.pseudo.at(words, i);
    if (pseudo) {
      i += pseudo.length - 1;
      continue;
    }
    const before = by.before.at(words, i);
    if (before && !(words[i]?.norm === 'no' && words[i]?.stop === 1)) {
      // "don't smell any gas": the verb inside the denial is denied too
      if (by.talk) denied.fill(1, i + 1, i + before.length);
      for (let k = i + before.length, left = by.reach; k < n && left > 0; k++, left--) {
        if (sentenceOf[k] !== sentenceOf[i] || by.ends.at(words, k)) break;
        if (by.talk && cures.test(words[k]?.norm ?? '')) break;
        if (!by.lists && clauseOf[k] !== clauseOf[i] && !isList(marks, k, i)) break;
        denied[k] = 1;
      }
    }
    const after = by.after.at(words, i);
    if (after)
      for (let k = i - 1, left = by.reach; k >= 0 && left > 0 && clauseOf[k] === clauseOf[i]; k--, left--)
        denied[k] = 1;
    if (by.talk && isAnswer(marks, i)) for (const k of asked(marks, i)) denied[k] = 1;
  }
  return denied;
}

/** "Leaks, none." "Smell of smoke no": a denial that stands alone at the end. */
const isAnswer = (marks: Marks, i: number): boolean =>
  i > 0 &&
  /^(?:no|none|nope|nil|zero|nada|negative|nowhere)$/.test(marks.words[i]?.norm ?? '') &&
  marks.sentenceOf[i - 1] === marks.sentenceOf[i] &&
  (marks.words[i]?.stop !== 0 || marks.clauseOf[i + 1] !== marks.clauseOf[i]);

/** The words such a denial answers: those before it in its clause, or the short clause before it. */
function asked(marks: Marks, i: number): number[] {
  const out: number[] = [];
  const of = marks.clauseOf[i - 1];
  for (let k = i - 1; k >= 0 && marks.clauseOf[k] === of; k--) out.push(k);
  return out.length <= 5 ? out : [];
}

/** "no chips, cracks or leaks": a denial runs on over commas while only single words follow. */
function isList(marks: Marks, k: number, from: number): boolean {
  const { words, clauseOf } = marks;
  let length = 0;
  for (let j = k; j < words.length && clauseOf[j] === clauseOf[k] && length < 5; j++) length++;
  return (
    length <= 3 &&
    (clauseOf[k] ?? 0) - (clauseOf[from] ?? 0) <= 3 &&
    !/^(?:one|two|a|the|it|some|i|we|there|this|that|just|small|slight|little|they|he|she|you|its|so|looks|all|both|everything|and|works|good|okay|ok|dry|fine|clean|solid)$/.test(
      words[k]?.norm ?? '',
    ) &&
    marks.mentionAt.from(k)?.weak !== false &&
    !marks.numberAt.from(k)
  );
}
