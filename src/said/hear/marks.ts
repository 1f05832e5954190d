// Why: everything that can be recognised by itself is marked on the stream once, before anything is concluded from it.

import { aspectPhrases, isKnownWord, partPhrases, weakParts } from './lexicon.ts';
import { isPronounOne } from './number-item.ts';
import { type NumberSpan, numbersIn } from './number-span.ts';
import { type PlaceHit, placeAt } from './place-words.ts';
import type { Word } from './word.ts';

/** A part named. `parts` in the order of likelihood; `aside` when it only says where ("over the sink"). */
export interface Mention {
  readonly from: number;
  readonly to: number;
  readonly parts: readonly string[];
  readonly weak: boolean;
  readonly aside: boolean;
}

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
  readonly clauseOf: readonly number[];
  readonly sentenceOf: readonly number[];
  /** Capitalised words that are no ordinary ones. */
  readonly isName: (i: number) => boolean;
}

const asideBefore = new Set(
  'by near behind over under underneath above below beside around at next'.split(' '),
);
const articles = new Set('the a an this that your my these those his her its'.split(' '));
const verbWhen = new Set(
  "it that they this to will all both 'll can does not won't don't doesn't which one just and still you i we doesnt didn't both's who everything".split(
    ' ',
  ),
);
const verbish = new Set(
  'lights light slides slide heat heats seals seal vents pumps pump drains drive drives steers dump dumps plugs plug step stop covers brake brakes screens shades tracks shocks jacks'.split(
    ' ',
  ),
);
const starters = new Set(
  "it they that this there the i we you he she it's a an his her my all both no these those nothing then one".split(
    ' ',
  ),
);
const breakers = new Set('but except because although though however so until unless while'.split(' '));
/** A part whose name is a house word is meant only where its family is talked about. */
const family: Readonly<Record<string, RegExp>> = {
  house: /batter|disconnect/,
  chassis: /batter|disconnect/,
  cell: /batter/,
  cells: /batter/,
  bank: /batter/,
  drives: /^tire/,
  steers: /^tire/,
  tank: /^(?:lp_|fuel_)/,
  bottle: /^lp_/,
  cylinder: /^lp_/,
};

/** Where a sentence begins: after its stop, after a long silence, or at a capital that is no name. */
function isSentenceStart(words: readonly Word[], i: number): boolean {
  const w = words[i] as Word;
  const before = words[i - 1];
  if (!before || before.stop === 2 || w.pause >= 1.5) return true;
  if (!w.capital || before.stop === 1 || w.norm === 'i' || w.norm.length < 2 || w.written === before.written)
    return false;
  return (
    isKnownWord(w.norm) &&
    w.norm.length > 1 &&
    !/^(?:lp|led|agm|co|tpo|epdm|tv|tvs|ac|vin|psi|gfci|rv|rpm|abs|v|k|cca|def|january|february|march|april|june|july|august|september|october|november|december|monday|friday|saturday|sunday)$/.test(
      w.norm,
    )
  );
}

function mentionsIn(words: readonly Word[], taken: Uint8Array): Mention[] {
  const out: Mention[] = [];
  let recent: string[] = [];
  for (let i = 0; i < words.length; ) {
    const hit = partPhrases.at(words, i);
    const w = words[i] as Word;
    if (!hit || (taken[i] && hit.length === 1)) {
      i++;
      continue;
    }
    const said = words
      .slice(i, i + hit.length)
      .map((x) => x.norm)
      .join(' ');
    const before = words[i - 1];
    const joined = before !== undefined && before.stop === 0;
    const last = out.at(-1);
    const asVerb =
      hit.length === 1 &&
      verbish.has(said) &&
      joined &&
      (verbWhen.has(before.norm) || (last !== undefined && last.to === i));
    const needs = family[said];
    const isFamily = !needs || recent.some((p) => needs.test(p));
    let broken = false;
    for (let k = i; k < i + hit.length - 1; k++) if ((words[k] as Word).stop > 0) broken = true;
    if (asVerb || !isFamily || broken) {
      i++;
      continue;
    }
    let back = i - 1;
    while (back >= 0 && back > i - 4 && words[back]?.stop === 0 && articles.has(words[back]?.norm ?? ''))
      back--;
    const aside =
      (joined &&
        words[back]?.stop === 0 &&
        asideBefore.has(words[back]?.norm ?? '') &&
        !(words[back]?.norm === 'at' && words[back - 1]?.norm === 'look') &&
        !(words[back]?.norm === 'at' && words[back - 1]?.norm === 'looking')) ||
      (words[back]?.norm === 'to' && words[back - 1]?.norm === 'next' && joined);
    let parts = [...hit.values];
    if (parts.length > 1) {
      const near = parts.find((p) => recent.includes(p));
      if (near) parts = [near, ...parts.filter((p) => p !== near)];
    }
    const mention = { from: i, to: i + hit.length, parts, weak: weakParts.has(said), aside };
    out.push(mention);
    if (!aside) recent = [...parts, ...recent].slice(0, 8);
    i += hit.length;
    void w;
  }
  return out;
}

/** Marks the stream. */
export function markWords(words: readonly Word[]): Marks {
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
  for (const n of numbers) taken.fill(1, n.from, n.to);
  const mentions = mentionsIn(words, taken);
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
    if (i > 0 && isSentenceStart(words, i)) {
      sentence++;
      clause++;
    } else if (before && before.stop > 0 && !(taken[i] && taken[i - 1] && sameNumber(numbers, i))) clause++;
    else if (i > 0 && breakers.has(w.norm)) clause++;
    else if (
      i > 0 &&
      w.norm === 'and' &&
      (starters.has(words[i + 1]?.norm ?? '') || mentions.some((m) => m.from === i + 1 && !m.weak))
    )
      clause++;
    clauseOf.push(clause);
    sentenceOf.push(sentence);
  });
  const isName = (i: number): boolean => {
    const w = words[i];
    return w?.capital === true && !isKnownWord(w.norm) && w.norm.length > 2 && !isPronounOne(words, i);
  };
  return { words, numbers, mentions, aspects, places, clauseOf, sentenceOf, isName };
}

const sameNumber = (numbers: readonly NumberSpan[], i: number): boolean =>
  numbers.some((n) => n.from < i && i < n.to);
