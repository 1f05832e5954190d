// Why: a clause with what is marked in it is the unit everything is read by; a draft is what one gives.
import type { Value } from '../entry.ts';
import type { HeardObservation } from './heard.ts';
import type { AspectHit, Marks } from './marks.ts';
import type { Mention } from './mention.ts';
import type { NumberSpan } from './number-span.ts';
import type { PlaceHit } from './place-words.ts';

/** An observation in the making: word indexes instead of seconds. */
export interface Draft {
  readonly part: string;
  readonly place?: string;
  /** Room, landmark or condition of the reading, in words. */
  readonly where?: string;
  readonly aspect: string;
  readonly value: Value;
  readonly sense: HeardObservation['sense'];
  readonly polarity: HeardObservation['polarity'];
  readonly hedged: boolean;
  readonly saidBy?: string;
  /** Words quoted, `to` one past the last. */
  readonly from: number;
  readonly to: number;
  /** The word it turns on. */
  readonly at: number;
  /** What speaks for it, 0 to 1. */
  readonly weight: number;
}

/** A clause: word indexes, and what is marked in it. */
export interface Clause {
  readonly id: number;
  /** Its place in the list of clauses. */
  readonly index: number;
  readonly from: number;
  readonly to: number;
  readonly sentence: number;
  readonly mentions: readonly Mention[];
  readonly numbers: readonly NumberSpan[];
  readonly places: readonly PlaceHit[];
  readonly aspects: readonly AspectHit[];
}

const groupBy = <T extends { readonly from: number }>(
  items: readonly T[],
  clauseOf: readonly number[],
): Map<number, T[]> => {
  const map = new Map<number, T[]>();
  for (const item of items) {
    const c = clauseOf[item.from] ?? 0;
    const list = map.get(c);
    if (list) list.push(item);
    else map.set(c, [item]);
  }
  return map;
};

/** The clauses of a marked stream, in order. */
export function clausesOf(marks: Marks): Clause[] {
  const mentions = groupBy(marks.mentions, marks.clauseOf);
  const numbers = groupBy(marks.numbers, marks.clauseOf);
  const places = groupBy(marks.places, marks.clauseOf);
  const aspects = groupBy(marks.aspects, marks.clauseOf);
  const out: Clause[] = [];
  for (let i = 0; i < marks.words.length; ) {
    let to = i;
    while (to < marks.words.length && marks.clauseOf[to] === marks.clauseOf[i]) to++;
    const id = marks.clauseOf[i] ?? 0;
    out.push({
      id,
      index: out.length,
      from: i,
      to,
      sentence: marks.sentenceOf[i] ?? 0,
      mentions: mentions.get(id) ?? [],
      numbers: numbers.get(id) ?? [],
      places: places.get(id) ?? [],
      aspects: aspects.get(id) ?? [],
    });
    i = to;
  }
  return out;
}
