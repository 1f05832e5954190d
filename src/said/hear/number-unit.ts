// Why: the unit of a number stands right behind it, sometimes in words that are numbers themselves: "nine thirty-seconds".
import { itemAt, type NumberItem } from './number-item.ts';
import type { Reading } from './number-reading.ts';
import { phraseList } from './phrase-index.ts';
import { type SaidUnit, unitWords } from './unit-words.ts';
import type { Word } from './word.ts';

/** A number without its unit yet. */
export interface Plain {
  from: number;
  to: number;
  items: NumberItem[];
  readings: Reading[];
}

/** Words for thirty-seconds of an inch, as a recogniser may write them. */
export const thirtySeconds = phraseList([
  'thirty seconds',
  '30 seconds',
  'thirty second',
  'thirty twos',
  '32nds',
  '32 nds',
  '32s',
  '32',
  '30 second',
]);

/** True when no stop parts word `i` from the one before. */
export const joinedTo = (words: readonly Word[], i: number): boolean => words[i - 1]?.stop === 0;

/** The unit that stands at `to`, and where it ends. */
export function unitAt(
  words: readonly Word[],
  to: number,
  plain: Plain,
): { unit: SaidUnit; to: number } | undefined {
  let at = to;
  if (!joinedTo(words, at)) return undefined;
  const last = plain.readings[0]?.value ?? 99;
  const tread = thirtySeconds.at(words, at);
  if (tread && last <= 32 && (plain.items.length === 1 || plain.items.length >= 3)) {
    return { unit: { units: ['[in_i]/32'], times: 1 }, to: at + tread.length };
  }
  const n = words[at]?.norm;
  if (n === 'of' && (words[at + 1]?.norm === 'an' || words[at + 1]?.norm === 'a')) at += 2;
  else if ((n === 'an' || n === 'a') && plain.items.at(-1)?.kind === 'fraction') at += 1;
  const hit = unitWords.at(words, at);
  const unit = words[at]?.norm === 'v' && itemAt(words, at + 1) ? undefined : hit?.values[0];
  if (!hit || !unit) return undefined;
  if (
    unit.units[0] === 's' &&
    words[at]?.norm === 'second' &&
    last !== 1 &&
    !/^a|per$/.test(words[at + 1]?.norm ?? '') &&
    plain.items.length === 1 &&
    plain.items[0]?.kind === 'digit' &&
    last < 2
  )
    return undefined;
  return { unit, to: at + hit.length };
}
