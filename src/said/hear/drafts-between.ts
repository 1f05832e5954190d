// Why: what was said shortly before or after is looked for all the time; in a long talk that must not mean looking through all of it.
import type { Draft } from './clause.ts';

/** Of drafts in order of their words, those that turn on a word from `from` (included) to `to` (left out). */
export function draftsBetween(drafts: readonly Draft[], from: number, to: number): readonly Draft[] {
  const first = firstFrom(drafts, from);
  let end = first;
  while (end < drafts.length && (drafts[end]?.at ?? 0) < to) end++;
  return drafts.slice(first, end);
}

/** Index of the first draft that turns on word `at` or a later one. */
export function firstFrom(drafts: readonly { readonly at: number }[], at: number): number {
  let low = 0;
  let high = drafts.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if ((drafts[mid]?.at ?? 0) < at) low = mid + 1;
    else high = mid;
  }
  return low;
}
