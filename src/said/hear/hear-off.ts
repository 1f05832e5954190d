// Why: "reads four degrees high" says by how much an instrument is wrong.
import type { Clause, Draft } from './clause.ts';
import { hasTrait } from './part-traits.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

const wrong =
  /^(?:high|low|off|out|fast|slow|hot|cold|heavy|light|optimistic|pessimistic|wrong|over|under|different|warmer|cooler|higher|lower)$/;
const reads =
  /^(?:reads?|reading|shows?|showing|is|'s|runs?|running|about|off|by|registers?|says?|around|maybe|good|was|be|easily)$/;

/** Instruments told to be off by a number, in a clause. */
export function hearOff(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words } = talk.marks;
  const norm = (k: number): string => (k >= clause.from && k < clause.to ? (words[k]?.norm ?? '') : '');
  for (const span of clause.numbers) {
    if (taken[span.from] || talk.scopes.elsewhere[span.from] || span.money) continue;
    const behind = norm(span.to) === 'too' ? span.to + 1 : span.to;
    const offBy = norm(span.from - 1) === 'by' && /^(?:off|out|over|under|wrong)$/.test(norm(span.from - 2));
    const after =
      wrong.test(norm(behind)) &&
      span.unit !== undefined &&
      /^(?:\[degF\]|Cel|%|V|\[psi\]|\[mi_i\]\/h|\[gal_us\])$/.test(span.unit.units[0] ?? '');
    if (!offBy && !(after && reads.test(norm(span.from - 1)))) continue;
    const part = talk.partsFor(span.from, span.to, clause).find((p) => hasTrait(p, ['reading']));
    if (!part || !talk.isClose(part, span.from, clause)) continue;
    const at = offBy ? span.from - 2 : behind;
    return [
      draftOf(
        talk,
        clause,
        taken,
        { part, aspect: 'reading', state: 'fails', sense: 'defect', polarity: 'bad', weight: 0.75 },
        at,
        1,
      ),
    ];
  }
  return [];
}
