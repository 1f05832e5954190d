// Why: "tile and carpet" is one answer to what the floor is, not two that contradict each other.
import type { Draft } from './clause.ts';
import type { Word } from './word.ts';

/** Puts kinds of one part that are joined by "and" into one text; changes the list. */
export function joinTypes(drafts: Draft[], words: readonly Word[]): void {
  for (let i = drafts.length - 1; i > 0; i--) {
    const b = drafts[i] as Draft;
    if (b.sense !== 'identity' || b.aspect !== 'type' || b.value.is !== 'text') continue;
    let k = i - 1;
    const isFirst = (a: Draft | undefined): boolean =>
      a?.part === b.part && a.aspect === 'type' && a.sense === 'identity';
    while (k >= 0 && b.at - (drafts[k]?.at ?? 0) <= 5 && !isFirst(drafts[k])) k--;
    if (!isFirst(drafts[k]) || b.at - (drafts[k]?.at ?? 0) > 5) continue;
    const a = drafts[k];
    if (a?.value.is !== 'text' || a.value.text === b.value.text) continue;
    const between = words.slice(a.at + 1, b.at).map((w) => w.norm);
    if (!between.includes('and') && !between.includes('with')) continue;
    drafts[k] = {
      ...a,
      value: { is: 'text', text: `${a.value.text} and ${b.value.text}` },
      to: Math.max(a.to, b.at + 1),
    };
    drafts.splice(i, 1);
  }
}
