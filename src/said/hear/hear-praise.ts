// Why: praise is kept apart as a claim; it is never also a condition.
import type { Clause, Draft } from './clause.ts';
import { praisePhrases } from './lexicon.ts';
import { better, flattered, noBetter, praiseAlone } from './praise-words.ts';
import type { Talk } from './talk.ts';

const span = (clause: Clause, at: number, before: number, after: number): { from: number; to: number } => ({
  from: Math.max(clause.from, at - before),
  to: Math.min(clause.to, at + after),
});

/** "You won't find a sweeter one", "best roof in the county", "more counter space than my apartment". */
function patternAt(talk: Talk, clause: Clause, i: number): { readonly length: number } | undefined {
  const { words } = talk.marks;
  const none = noBetter.at(words, i);
  if (none) {
    for (let k = i; k < Math.min(clause.to, i + none.length + 4); k++)
      if (k >= i + none.length - 1 && better.test(words[k]?.norm ?? '')) return { length: none.length };
  }
  if (words[i]?.norm === 'more')
    for (let k = i + 2; k < Math.min(clause.to, i + 9); k++)
      if (words[k]?.norm === 'than' && words.slice(k, clause.to).some((w) => flattered.test(w.norm)))
        return { length: 1 };
  return undefined;
}

/** Praise in a clause: one claim, tied to its part. */
export function hearPraise(talk: Talk, clause: Clause): Draft[] {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const hit = praisePhrases.at(words, i) ?? praiseAlone.at(words, i) ?? patternAt(talk, clause, i);
    if (!hit) continue;
    const own = clause.mentions.find((m) => !m.aside)?.parts[0];
    const part = own ?? talk.partFor(i, i + hit.length, clause) ?? 'coach';
    return [
      {
        part,
        aspect: 'claim',
        value: {
          is: 'text',
          text: words
            .slice(i, i + hit.length)
            .map((w) => w.norm)
            .join(' '),
        },
        sense: 'claim',
        polarity: 'good',
        hedged: false,
        ...span(clause, i, 8, hit.length + 5),
        at: i,
        weight: 0.7,
      },
    ];
  }
  return [];
}
