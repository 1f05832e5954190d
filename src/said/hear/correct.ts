// Why: people correct themselves aloud; the later word replaces the earlier, and both are kept.
import { carriedNumber } from './carry-number.ts';
import type { Draft } from './clause.ts';
import { contradicted } from './contradicted.ts';
import { firstFrom } from './drafts-between.ts';
import type { Marks } from './marks.ts';
import type { Scopes } from './scope.ts';
import { settledIn, swapsIn } from './swap-back.ts';
import { takeBacks } from './take-back.ts';

/** The drafts as they stand after correction; which are taken back, and by which others. */
export interface Corrected {
  readonly drafts: readonly Draft[];
  /** Index of a draft -> indexes of those it replaces. */
  readonly replaces: ReadonlyMap<number, readonly number[]>;
  readonly retracted: ReadonlySet<number>;
}

/** How far before and after a trigger, in words, the wrong and the right one may stand. */
const back = 14;
const ahead = 20;

const isState = (d: Draft): boolean => d.value.is === 'state';
const isTakenBack = (a: Draft, b: Draft): boolean =>
  isState(a) && isState(b)
    ? a.part === b.part && (a.polarity !== b.polarity || (a.sense === b.sense && a.aspect === b.aspect))
    : a.sense === b.sense &&
      (a.sense === 'quantity' ? a.value.is === b.value.is : a.aspect === b.aspect || a.part === b.part) &&
      (a.part === b.part || a.aspect === b.aspect);

/** Finds self-corrections among drafts in order of their words. */
export function correctDrafts(marks: Marks, scopes: Scopes, heard: readonly Draft[]): Corrected {
  const drafts = [...heard];
  const gone = new Set<Draft>();
  const instead = new Map<Draft, Draft[]>();
  const put = (right: Draft, wrong: Draft): void => {
    if (right === wrong || gone.has(right)) return;
    instead.set(right, [...(instead.get(right) ?? []), wrong]);
    gone.add(wrong);
  };
  for (const t of takeBacks(marks)) {
    const first = firstFrom(drafts, t.from - back);
    const near = drafts.slice(first, firstFrom(drafts, t.to + 2 * ahead));
    const wrong = near.filter((d) => d.at < t.from).at(-1);
    if (!wrong || wrong.sense === 'claim' || gone.has(wrong)) continue;
    const carried = carriedNumber(marks, scopes, wrong, t);
    // "twenty-nine seconds. No, I started late. Again: eighty-five to a hundred, thirty-four seconds": the same is said anew
    const anew =
      carried && wrong.sense === 'quantity' && near.some((d) => d.at === carried.span.from)
        ? near.find(
            (d) =>
              d.at >= carried.span.to &&
              d.at - t.to <= ahead &&
              d.part === wrong.part &&
              d.aspect === wrong.aspect &&
              near.some((o) => o.at === carried.span.from && o.part === d.part && o.aspect !== d.aspect),
          )
        : undefined;
    if (anew) {
      put(anew, wrong);
      continue;
    }
    if (carried) {
      const { span } = carried;
      const there = near.filter((d) => d.at >= span.from && d.at < span.to);
      const alike = there.find((d) => d.part === wrong.part && d.aspect === wrong.aspect);
      const right = alike ?? carried.draft;
      // what was made of the number or of the words of correction themselves
      for (const d of near)
        if (
          d !== right &&
          ((there.includes(d) && d.sense === wrong.sense) || (d.at >= t.from && d.at < t.to))
        )
          drafts.splice(drafts.indexOf(d, first), 1);
      if (!alike) drafts.splice(firstFrom(drafts, right.at + 1), 0, right);
      for (const d of near) if (d.at === wrong.at && d.sense === wrong.sense) put(right, d);
      continue;
    }
    if (t.weak) continue;
    const right = near.find((d) => d.at >= t.to && d.at - t.to <= ahead && isTakenBack(wrong, d));
    if (right) put(right, wrong);
    else if (t.drops) gone.add(wrong);
  }
  for (const { wrong, right } of [...swapsIn(marks, drafts), ...settledIn(marks, drafts)]) {
    if (gone.has(wrong)) continue;
    if (!drafts.includes(right)) drafts.splice(firstFrom(drafts, right.at + 1), 0, right);
    put(right, wrong);
  }
  for (const d of contradicted(marks, drafts)) gone.add(d);
  const at = new Map(drafts.map((d, i) => [d, i]));
  const indexOf = (d: Draft): number => at.get(d) ?? -1;
  const replaces = new Map<number, number[]>();
  for (const [right, wrongs] of instead) {
    const those = wrongs.map(indexOf).filter((i) => i >= 0);
    if (indexOf(right) >= 0 && those.length > 0) replaces.set(indexOf(right), those);
  }
  return { drafts, replaces, retracted: new Set([...gone].map(indexOf).filter((i) => i >= 0)) };
}
