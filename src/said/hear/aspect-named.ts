// Why: which reading a number is, is mostly said by the words beside it.
import type { Aspect } from '../../catalogue/part.ts';
import type { Clause } from './clause.ts';
import { inOutOwner } from './number-end.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';

/** How well the words beside the number name the aspect: 0 where they do not. */
export function named(talk: Talk, clause: Clause, span: NumberSpan, part: string, a: Aspect): number {
  let best = 0;
  const lead = talk.lead.filter(
    (h) => clause.from - h.to <= 4 && clause.numbers[0] === span && clause.mentions.length === 0,
  );
  for (const hit of [...clause.aspects, ...lead]) {
    if (!hit.keys.has(`${part}/${a.id}`)) continue;
    // "steer left one and a half": this "left" is a side, nothing is left over
    if (clause.places.some((p) => p.from <= hit.from && p.to >= hit.to && p.to - p.from > 1)) continue;
    // "start battery" is no start
    if (
      clause.mentions.some(
        (m) =>
          m.from <= hit.from &&
          m.to >= hit.to &&
          m.to - m.from > hit.to - hit.from &&
          !m.parts.includes(part),
      )
    )
      continue;
    // the unit itself names nothing
    if (span.unit && hit.from >= span.bare && hit.to <= span.to) continue;
    // "seventy-five in and sixty-four out": these two belong to the number right before them
    const text = talk.marks.words[hit.from]?.norm;
    // "goes out in twenty-five seconds": this "in" only leads to the time
    if (
      text === 'in' &&
      hit.to - hit.from === 1 &&
      hit.to === span.from &&
      (span.unit?.units[0] === 's' ||
        span.unit?.units[0] === 'min' ||
        talk.marks.words[hit.from - 1]?.norm === 'out') &&
      talk.marks.words[hit.from - 1]?.norm !== 'in'
    )
      continue;
    if (hit.to - hit.from === 1 && (text === 'in' || text === 'out')) {
      const owner = inOutOwner(talk, hit.from);
      if (owner === span) best = Math.max(best, 5.5);
      if (owner) continue;
    }
    const gap =
      hit.to <= span.from ? span.from - hit.to : hit.from >= span.bare ? hit.from - span.bare + 0.5 : 0;
    const other = clause.numbers.some(
      (n) =>
        n !== span &&
        (hit.to <= span.from ? n.from >= hit.to && n.to <= span.from : n.from >= span.to && n.to <= hit.from),
    );
    best = Math.max(best, (other ? 1.2 : 4) - Math.min(2.5, gap * 0.3) + (hit.to - hit.from) * 0.3);
  }
  return best;
}
