// Why: "about", "or so", "I think" beside a number say that it is no exact one.
import { phraseList } from './phrase-index.ts';
import type { Word } from './word.ts';

const approxBefore = phraseList([
  'about',
  'around',
  'roughly',
  'maybe',
  'approximately',
  'nearly',
  'almost',
  'close to',
  'probably',
  'somewhere around',
  'something like',
  'i think',
  'i want to say',
  'looks like',
  'call it',
  'say',
  'i guess',
  'guessing',
  'i believe',
  'ballpark',
  'pretty close to',
  'just under',
  'just over',
  'a little over',
  'a little under',
  'or so',
]);
const approxAfter = phraseList([
  'or so',
  'ish',
  'approximate',
  'approximately',
  'give or take',
  'roughly',
  'i think',
  'maybe',
  'i believe',
  'i guess',
  'or thereabouts',
  'more or less',
  'probably',
  'about',
  'i would say',
  'estimated',
]);

/** True when the words beside the number `from`..`to` say that it is a rough one. */
export function isApprox(words: readonly Word[], from: number, to: number): boolean {
  for (let k = Math.max(0, from - 5); k < from; k++) {
    const hit = approxBefore.at(words, k);
    if (hit && k + hit.length >= from - 1 && words.slice(k, from).every((w) => w.stop < 2)) return true;
  }
  const after = approxAfter.at(words, to);
  return after !== undefined && (words[to - 1]?.stop ?? 2) < 2;
}
