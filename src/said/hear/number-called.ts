// Why: what people call a reading in passing stands before its number, over commas and measuring words, or right behind it.
import type { Clause } from './clause.ts';
import { measuredFrom } from './measuring-words.ts';
import type { NumberSpan } from './number-span.ts';
import { sentenceStart } from './number-subject.ts';
import { type ReadingName, readingNames } from './reading-names.ts';
import type { Talk } from './talk.ts';

/** Words that call a reading, led up to the number by nothing but measuring words, or right behind it. */
export function called(
  talk: Talk,
  clause: Clause,
  span: NumberSpan,
  among: ReadonlySet<string>,
): ReadingName[] {
  const { words } = talk.marks;
  const out: ReadingName[] = [];
  const take = (names: readonly ReadingName[]): void => {
    for (const n of names) if (!n.among || [...n.among].some((p) => among.has(p))) out.push(n);
  };
  const first = sentenceStart(talk, clause);
  const start = measuredFrom(talk.marks, span.from, first);
  for (let i = span.from - 1; i >= Math.max(first, start - 3) && span.from - i < 10; i--) {
    if (talk.marks.numberAt.to(i + 1)) break;
    const wide = i > first ? readingNames.at(words, i - 1) : undefined;
    const hit = wide && wide.length > 1 ? wide : readingNames.at(words, i);
    const from = hit === wide ? i - 1 : i;
    if (!hit || from + hit.length > span.from || from + hit.length < start) continue;
    if (hit.length === 1 && isPlainInOut(words[i]?.norm) && i !== span.from - 1) continue;
    take(hit.values);
    if (out.length > 0) break;
  }
  if (out.length === 0) {
    const aspect = inAndOut(talk, span);
    if (aspect)
      return (readingNames.at([{ norm: aspect }], 0)?.values ?? []).filter((n) => n.part === 'ac_run');
  }
  if (out.length === 0 && (words[span.to - 1]?.stop ?? 2) === 0) {
    let at = span.to;
    while (
      at < span.to + 2 &&
      /^(?:on|at|the|it|coming|of|going)$/.test(words[at]?.norm ?? '') &&
      !readingNames.at(words, at)
    )
      at++;
    const hit = readingNames.at(words, at);
    const end = at + (hit?.length ?? 0);
    const next = words[end]?.norm ?? '';
    if (
      hit &&
      talk.marks.clauseOf[at] === clause.id &&
      ((words[end - 1]?.stop ?? 2) > 0 || end >= words.length || next === 'and' || hit.length > 1)
    )
      take(hit.values);
  }
  return out;
}
/** "Eighty-one in and sixty-three out": air that comes back warm and goes out cold. */
function inAndOut(talk: Talk, span: NumberSpan): 'return' | 'supply' | undefined {
  const { words, numberAt } = talk.marks;
  const side = words[span.to]?.norm;
  const value = span.readings[0]?.value ?? 0;
  if ((side !== 'in' && side !== 'out') || value < 35 || value > 110) return undefined;
  for (let i = Math.max(0, span.from - 8); i <= span.from + 8; i++) {
    const other = numberAt.from(i);
    if (!other || other === span) continue;
    const theirs = words[other.to]?.norm;
    const v = other.readings[0]?.value ?? 0;
    if (side === 'in' && theirs === 'out' && other.from > span.from && v < value && v > 30) return 'return';
    if (side === 'out' && theirs === 'in' && other.from < span.from && v > value && v < 112) return 'supply';
  }
  return undefined;
}

const isPlainInOut = (n: string | undefined): boolean => n === 'in' || n === 'out';
