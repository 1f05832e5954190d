// Why: everything that can be recognised by itself is marked on the stream once, before anything is concluded from it.

import { placeNames } from './common-words.ts';
import { aspectPhrases, isKnownWord } from './lexicon.ts';
import { MarkedAt } from './marked-at.ts';
import { type Mention, mentionsIn } from './mention.ts';
import { type NumberSpan, numbersIn } from './number-span.ts';
import { peopleIn } from './person-names.ts';
import { placeAt } from './place-at.ts';
import type { PlaceHit } from './place-words.ts';
import { isSentenceStart } from './sentence-start.ts';
import type { Word } from './word.ts';

/** Words that name an aspect. */
export interface AspectHit {
  readonly from: number;
  readonly to: number;
  readonly keys: ReadonlySet<string>;
}

/** All that is marked. `clauseOf` and `sentenceOf` give numbers that rise through the stream. */
export interface Marks {
  readonly words: readonly Word[];
  readonly numbers: readonly NumberSpan[];
  readonly mentions: readonly Mention[];
  readonly aspects: readonly AspectHit[];
  readonly places: readonly PlaceHit[];
  /** The same by the word they begin or end at. */
  readonly numberAt: MarkedAt<NumberSpan>;
  readonly mentionAt: MarkedAt<Mention>;
  readonly placeAt: MarkedAt<PlaceHit>;
  readonly clauseOf: readonly number[];
  readonly sentenceOf: readonly number[];
  /** Capitalised words that are no ordinary ones. */
  readonly isName: (i: number) => boolean;
}

const starters = new Set(
  "it they that this there the i we you he she it's a an his her my all both no these those nothing then one".split(
    ' ',
  ),
);
const breakers = new Set('but except because although though however so until unless while'.split(' '));
/** Marks the stream. */
export function markWords(stream: readonly Word[]): Marks {
  const starts = new Uint8Array(stream.length + 1);
  stream.forEach((_, i) => {
    if (isSentenceStart(stream, i)) starts[i] = 1;
  });
  const words = stream.map((w, i): Word => (starts[i + 1] && w.stop !== 2 ? { ...w, stop: 2 } : w));
  const places: PlaceHit[] = [];
  const numbered = new Uint8Array(words.length + 1);
  for (let i = 0; i < words.length; ) {
    const hit = placeAt(words, i);
    if (hit) {
      places.push(hit);
      if (hit.spot && /-/.test(hit.spot)) numbered.fill(1, hit.from, hit.to);
      i = hit.to;
    } else i++;
  }
  const hidden = words.map((w, i) => (numbered[i] ? { ...w, norm: '' } : w));
  const numbers = numbersIn(hidden);
  const taken = new Uint8Array(words.length + 1);
  const inNumber = new Int32Array(words.length + 1);
  numbers.forEach((n, k) => {
    taken.fill(1, n.from, n.to);
    inNumber.fill(k + 1, n.from, n.to);
  });
  const mentions = mentionsIn(words, taken, starts);
  const strongAt = new Set(mentions.filter((m) => !m.weak).map((m) => m.from));
  const aspects: AspectHit[] = [];
  for (let i = 0; i < words.length; i++) {
    const hit = aspectPhrases.at(words, i);
    if (hit) aspects.push({ from: i, to: i + hit.length, keys: new Set(hit.values) });
  }
  const clauseOf: number[] = [];
  const sentenceOf: number[] = [];
  let clause = 0;
  let sentence = 0;
  words.forEach((w, i) => {
    const before = words[i - 1];
    if (i > 0 && starts[i]) {
      sentence++;
      clause++;
    } else if (before && before.stop > 0 && !(inNumber[i] !== 0 && inNumber[i] === inNumber[i - 1])) clause++;
    else if (i > 0 && breakers.has(w.norm)) clause++;
    else if (
      i > 0 &&
      !(inNumber[i] !== 0 && inNumber[i] === inNumber[i - 1]) &&
      w.norm === 'and' &&
      (starters.has(words[i + 1]?.norm ?? '') || strongAt.has(i + 1))
    )
      clause++;
    clauseOf.push(clause);
    sentenceOf.push(sentence);
  });
  // "Topper torn, driver": a place alone at the end of a sentence belongs to what was said before it
  for (const p of places) {
    const end = p.to === words.length || sentenceOf[p.to] !== sentenceOf[p.from];
    const alone =
      p.from > 0 &&
      clauseOf[p.from - 1] !== clauseOf[p.from] &&
      sentenceOf[p.from - 1] === sentenceOf[p.from];
    if (end && alone) for (let i = p.from; i < p.to; i++) clauseOf[i] = clauseOf[p.from - 1] ?? 0;
  }
  const isName = (i: number): boolean => {
    const w = words[i];
    return w?.capital === true && !isKnownWord(w.norm) && !placeNames.has(w.norm) && w.norm.length > 2;
  };
  const people = peopleIn(words, isName);
  return {
    words,
    numbers,
    mentions,
    aspects,
    places,
    numberAt: new MarkedAt(numbers),
    mentionAt: new MarkedAt(mentions),
    placeAt: new MarkedAt(places),
    clauseOf,
    sentenceOf,
    isName: (i) => isName(i) && !people.has(words[i]?.norm ?? ''),
  };
}
