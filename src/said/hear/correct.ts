// Why: people correct themselves aloud; the later word replaces the earlier, and both are kept.

import type { Draft } from './clause.ts';
import type { Marks } from './marks.ts';
import { corrections } from './trigger-words.ts';

/** Which drafts are taken back, and by which later ones. */
export interface Corrected {
  /** Index of a draft -> indexes of those it replaces. */
  readonly replaces: ReadonlyMap<number, readonly number[]>;
  readonly retracted: ReadonlySet<number>;
}

const isTakenBack = (a: Draft, b: Draft): boolean =>
  a.sense === b.sense &&
  (a.sense === 'quantity' ? a.value.is === b.value.is : a.aspect === b.aspect || a.part === b.part) &&
  (a.part === b.part || a.aspect === b.aspect);

/** How far before and after a trigger, in words, the wrong and the right one may stand. */
const back = 12;
const ahead = 18;

/** Finds self-corrections among drafts in order of their words. */
export function correctDrafts(marks: Marks, drafts: readonly Draft[]): Corrected {
  const replaces = new Map<number, number[]>();
  const retracted = new Set<number>();
  const { words } = marks;
  for (let i = 0; i < words.length; i++) {
    const hit = corrections.at(words, i, 1);
    const bareNo =
      !hit && words[i]?.norm === 'no' && (words[i]?.stop ?? 0) === 1 && (words[i - 1]?.stop ?? 0) >= 1;
    if (!hit && !bareNo) continue;
    const end = i + (hit?.length ?? 1);
    const said = words
      .slice(i, end)
      .map((w) => w.norm)
      .join(' ');
    if (
      /^(?:wait|sorry|rather|actually|i mean|back up|strike|correction)$/.test(said) &&
      words[i - 1]?.norm === 'say'
    )
      continue;
    const wrong = lastBefore(drafts, i, (d) => i - d.at <= back && !retracted.has(d.at));
    if (wrong !== undefined) {
      const old = drafts[wrong] as Draft;
      const right = drafts.findIndex(
        (d, k) => k !== wrong && d.at >= end && d.at - end <= ahead && isTakenBack(old, d),
      );
      if (right >= 0) {
        replaces.set(right, [...(replaces.get(right) ?? []), wrong]);
        retracted.add(wrong);
      } else if (/scratch|strike|correct|misspoke|take that back|disregard|ignore/.test(said))
        retracted.add(wrong);
    }
    i = end - 1;
  }
  return { replaces, retracted };
}

function lastBefore(drafts: readonly Draft[], i: number, may: (d: Draft) => boolean): number | undefined {
  for (let k = drafts.length - 1; k >= 0; k--) {
    const d = drafts[k] as Draft;
    if (d.at < i) return d.sense !== 'claim' && may(d) ? k : undefined;
  }
  return undefined;
}
