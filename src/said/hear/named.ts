// Why: a part is kept under the name of the catalogue; the words it was named by on the walk say which piece of it was meant.
import type { Draft } from './clause.ts';
import type { Marks } from './marks.ts';
import type { Mention } from './mention.ts';

/** Words back to which a part that was named is still the one talked about. */
const reach = 90;

/** The mention by which the part of an observation was named, the nearest before it, or in its own clause after it. */
export function namedBy(marks: Marks, draft: Draft): Mention | undefined {
  const clause = marks.clauseOf[draft.at];
  const fits = (k: number): Mention | undefined => {
    const m = marks.mentionAt.from(k);
    return m?.parts.includes(draft.part) ? m : undefined;
  };
  let k = draft.at;
  for (; k >= 0 && marks.clauseOf[k] === clause; k--) {
    const m = fits(k);
    if (m) return m;
  }
  for (let i = draft.at + 1; i < marks.words.length && marks.clauseOf[i] === clause; i++) {
    const m = fits(i);
    if (m) return m;
  }
  for (; k >= 0 && draft.at - k <= reach; k--) {
    const m = fits(k);
    if (m) return m;
  }
  return undefined;
}
