// Why: where a sentence ends, in talk that came without stops, shows in the words and kinds of words on both sides.
import { defectPhrases, goodPhrases, partPhrases, stationPhrases, verbs } from './lexicon.ts';
import { numberAt } from './number-span.ts';
import { placeAt } from './place-at.ts';
import { unknowns } from './trigger-words.ts';
import type { Word } from './word.ts';

/** The kind of each word: where the longest known phrase begins (capital letter), goes on (lower case), or the plain word. */
export interface Kinds {
  readonly begins: readonly string[];
  readonly ends: readonly string[];
}

const phrases = [
  ['P', partPhrases],
  ['D', defectPhrases],
  ['U', unknowns],
  ['G', goodPhrases],
  ['V', verbs],
  ['S', stationPhrases],
] as const;

/** Kinds of the words of a stream; stops in it are not looked at. */
export function kindsOf(words: readonly Word[]): Kinds {
  const begins = new Array<string>(words.length).fill('');
  const ends = new Array<string>(words.length).fill('');
  for (let i = 0; i < words.length; ) {
    const number = numberAt(words, i);
    if (number && number.to > i) {
      const said = number.unit ? 'Q' : 'N';
      begins[i] = said;
      for (let k = i; k < number.to; k++) {
        if (k > i) begins[k] = 'n';
        ends[k] = 'n';
      }
      ends[number.to - 1] = said;
      i = number.to;
      continue;
    }
    const place = placeAt(words, i);
    let kind = place ? 'L' : '';
    let length = place ? place.to - i : 0;
    for (const [k, index] of phrases) {
      const hit = index.at(words, i);
      if (hit && hit.length > length) {
        kind = k;
        length = hit.length;
      }
    }
    if (length === 0) {
      i++;
      continue;
    }
    begins[i] = kind;
    ends[i + length - 1] = kind;
    for (let k = i + 1; k < i + length; k++) begins[k] = kind.toLowerCase();
    for (let k = i; k < i + length - 1; k++) ends[k] = kind.toLowerCase();
    i += length;
  }
  return { begins, ends };
}

/** What speaks for or against a stop before word `i`, `since` words after the last one; each is a key of the weights. */
export function stopFeatures(words: readonly Word[], kinds: Kinds, i: number, since: number): string[] {
  const w = (k: number): string => words[k]?.norm ?? '^';
  const b = (k: number): string => kinds.begins[k] || w(k);
  const e = (k: number): string => kinds.ends[k] || w(k);
  const pause = words[i]?.pause ?? 0;
  return [
    'bias',
    `a${w(i - 1)}`,
    `b${w(i)}`,
    `c${w(i + 1)}`,
    `d${w(i - 2)}`,
    `e${e(i - 1)}`,
    `f${b(i)}`,
    `g${e(i - 1)} ${b(i)}`,
    `h${w(i - 1)} ${w(i)}`,
    `i${b(i)} ${b(i + 1)}`,
    `j${e(i - 2)} ${e(i - 1)}`,
    `k${e(i - 1)} ${b(i)} ${b(i + 1)}`,
    `l${b(i)} ${b(i + 1)} ${b(i + 2)}`,
    `m${e(i - 2)} ${e(i - 1)} ${b(i)}`,
    `n${Math.min(12, since)}`,
    `o${Math.min(12, since)} ${b(i)}`,
    pause >= 0.8 ? 'p2' : pause >= 0.25 ? 'p1' : 'p0',
  ];
}
