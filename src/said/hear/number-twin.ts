// Why: "gray and black are thirty-eight apiece" is one number and two readings.
import { partOf } from '../../catalogue/index.ts';
import type { Clause } from './clause.ts';
import { measuredFrom } from './measuring-words.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';

/** "Gray and black thirty-eight": one number for the two tanks named as one. */
export function bothTanks(clause: Clause, span: NumberSpan): number | undefined {
  const m = clause.mentions.filter((x) => !x.aside && x.to <= span.from).at(-1);
  const value = span.readings[0]?.value ?? 0;
  const unit = span.unit?.units[0];
  return m?.parts[0] === 'waste_tanks_under' &&
    span.from - m.to <= 4 &&
    (unit === undefined || unit === '[gal_us]' || unit === 'L') &&
    value >= 8 &&
    value <= 400
    ? value
    : undefined;
}

/** "The gray and the black are thirty-eight apiece": the other of two named together, which has the same reading. */
export function twinOf(
  talk: Talk,
  clause: Clause,
  span: NumberSpan,
  part: string,
  aspect: string,
): string | undefined {
  const { words, mentionAt } = talk.marks;
  const m = clause.mentions.filter((x) => !x.aside && x.to <= span.from).at(-1);
  if (!m?.parts.includes(part) || measuredFrom(talk.marks, span.from, clause.from) > m.to) return undefined;
  let back = m.from - 1;
  while (back > m.from - 3 && /^(?:the|your|both)$/.test(words[back]?.norm ?? '')) back--;
  if (words[back]?.norm !== 'and') return undefined;
  const other = mentionAt
    .to(back)
    ?.parts.find((p) => p !== part && partOf(p)?.aspects.some((a) => a.id === aspect));
  return other;
}
