// Why: "cell one twelve sixty-five", "leg two one nineteen": the first digit only says which, and the thing numbered leads its reading.
import { itemAt } from './number-item.ts';
import type { Word } from './word.ts';

const things = /^(?:cell|leg|line|phase|bank|battery|batt|bottle|cylinder|panel|zone|jack|injector|number)$/;

/** True where the digit at `i` only says which of several things, and a whole reading follows it. */
export function isNumbered(words: readonly Word[], i: number): boolean {
  if (!things.test(words[i - 1]?.norm ?? '') || (words[i - 1]?.stop ?? 2) > 1) return false;
  const which = itemAt(words, i);
  if (which?.kind !== 'digit' || which.value < 1 || which.value > 8 || words[which.to - 1]?.stop !== 0)
    return false;
  const first = itemAt(words, which.to);
  if (!first || first.kind === 'fraction' || first.kind === 'oh') return false;
  if (first.kind === 'full') return first.value >= 100;
  const second = words[first.to - 1]?.stop === 0 ? itemAt(words, first.to) : undefined;
  return second !== undefined || words[first.to]?.norm === 'point' || first.kind === 'decimal';
}

/** The stream with each such thing and its reading as one clause. */
export function numberedApart(words: readonly Word[]): Word[] {
  const out = [...words];
  for (let i = 1; i < words.length; i++) {
    if (!isNumbered(words, i)) continue;
    const thing = words[i - 1] as Word;
    const before = words[i - 2];
    if (thing.stop === 1) out[i - 1] = { ...thing, stop: 0 };
    if (before?.stop === 0 && itemAt(words, i - 2)) out[i - 2] = { ...before, stop: 1 };
  }
  return out;
}
