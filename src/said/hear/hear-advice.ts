// Why: what should be done, in the speaker's opinion, is kept apart from what was found.
import type { Clause, Draft } from './clause.ts';
import type { Talk } from './talk.ts';
import { advice } from './trigger-words.ts';

const span = (clause: Clause, at: number, before: number, after: number): { from: number; to: number } => ({
  from: Math.max(clause.from, at - before),
  to: Math.min(clause.to, at + after),
});

/** What should be done, in the speaker's opinion: "I would reseal that". */
export function hearAdvice(talk: Talk, clause: Clause, last: Draft | undefined): Draft[] {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const hit = advice.at(words, i);
    if (!hit) continue;
    const phrase = words
      .slice(i, i + hit.length)
      .map((w) => w.norm)
      .join(' ');
    if (
      /^(?:need|wants|should be|needs|need|i'd have|i would have|has to be|have to be)$/.test(phrase) &&
      !clause.mentions.some((m) => m.to <= i && i - m.to <= 2)
    )
      continue;
    const after = clause.mentions.find((m) => m.from >= i + hit.length && m.from - i - hit.length <= 3);
    const part =
      after?.parts[0] ?? (last && i - last.at < 30 ? last.part : talk.partFor(i, i + hit.length, clause));
    if (!part) continue;
    const place = last && last.part === part ? last.place : talk.placeOf(part, i, clause);
    return [
      {
        part,
        ...(place === undefined ? {} : { place }),
        aspect: 'advice',
        value: { is: 'state', state: 'advised' },
        sense: 'condition',
        polarity: 'neutral',
        hedged: false,
        ...span(clause, i, 4, hit.length + 6),
        at: i,
        weight: 0.6,
      },
    ];
  }
  return [];
}
