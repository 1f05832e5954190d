// Why: "they all come on but two over the sofa" is good news of the many and bad news of the few; the few are named by nothing but a place.
import type { Clause, Draft } from './clause.ts';
import { phraseList } from './phrase-index.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';
import { verbUses } from './verb-table.ts';

const list = (text: string): string[] => text.split(',').map((p) => p.trim());
const always = phraseList(
  list(
    'except, except for, excepting, apart from, other than, aside from, save for, save, bar, barring, besides, minus, not counting, short of, all but, with the exception of, outside of',
  ),
);
const few =
  /^(?:one|the|that|this|these|those|two|three|four|a|1|2|3|4|left|right|front|rear|driver|passenger|for)$/;
const many = /^(?:all|every|everything|both|each|they|rest|any|others?|everybody|whole|these|those)$/;
const be =
  /^(?:is|are|'s|'re|was|were|be|been|has|have|had|do|does|did|don't|doesn't|won't|isn't|ain't|will|'ll|i|we|you|he|she|it|they|which|that's|can|can't|not|never|when|if)$/;

/** What the exception is said of, if the clause holds one and nothing else is said in it. */
export function hearExcept(
  talk: Talk,
  clause: Clause,
  found: readonly Draft[],
  last: Draft | undefined,
  taken: Uint8Array,
): Draft[] {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const but =
      words[i]?.norm === 'but' &&
      i === clause.from &&
      /^(?:one|the|that|this|two|three|four|2|3|4)$/.test(words[i + 1]?.norm ?? '');
    const hit = but ? { length: 1 } : always.at(words, i);
    if (!hit || talk.scopes.elsewhere[i]) continue;
    const from = i + hit.length;
    const said = words.slice(from, clause.to).map((w) => w.norm);
    const good = [...found].reverse().find((d) => d.at < i) ?? (found.length === 0 ? last : undefined);
    if (
      said.length === 0 ||
      said.length > 12 ||
      !good ||
      i - good.at > 12 ||
      !(
        good.sense === 'operates' ||
        (good.sense === 'condition' && good.polarity === 'good') ||
        good.sense === 'absent'
      ) ||
      found.some((d) => d.at > i) ||
      !few.test(said[0] ?? '') ||
      said.some((n, k) => be.test(n) || (k > 1 && verbUses(n).some((u) => u.form === 'third'))) ||
      !words.slice(Math.max(0, i - 14), i).some((w) => many.test(w.norm) || /[^s]s$/.test(w.norm))
    )
      return [];
    const own = clause.mentions.find((m) => !m.aside && !m.weak && m.from >= from && m.from - from <= 3);
    const part = own?.parts[0] ?? good.part;
    return [
      draftOf(
        talk,
        clause,
        taken,
        good.sense === 'operates'
          ? { part, aspect: 'operates', state: 'fails', sense: 'defect', polarity: 'bad', weight: 0.75 }
          : { part, aspect: 'condition', state: 'poor', sense: 'defect', polarity: 'bad', weight: 0.65 },
        i,
        hit.length,
      ),
    ];
  }
  return [];
}
