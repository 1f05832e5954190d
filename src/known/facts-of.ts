// Why: what was seen and what stands on paper answer through one door, and where they disagree the asker is told.
import { aspectOf } from '../catalogue/index.ts';
import type { Value } from '../said/entry.ts';
import type { Day } from '../units/day.ts';
import { agree } from './agree.ts';
import type { Fact, Facts } from './facts.ts';
import { indexFacts } from './index-facts.ts';
import type { UnitFacts, UnitRecord } from './record.ts';

/** The facts of a record, as of a day, with the unit's own papers laid in. */
export function factsOf(record: UnitRecord, on: Day): Facts {
  const facts: Fact[] = record.known.map(
    ({ part, place, aspect, standing, value, sides, doubts, evidence }) => ({
      part,
      ...(place === undefined ? {} : { place }),
      aspect,
      standing,
      value,
      sides,
      doubts,
      evidence,
    }),
  );
  for (const paper of papersOf(record.unit)) {
    const at = facts.findIndex(
      (f) => f.part === 'coach' && f.aspect === paper.aspect && f.place === undefined,
    );
    const laid = layPaper(facts[at], paper);
    if (at >= 0) facts[at] = laid;
    else facts.push(laid);
  }
  return indexFacts(facts.sort(inRecordOrder), record.unit, on);
}

interface Paper {
  readonly aspect: string;
  readonly value: Value;
}

/** The fields of a unit entry that the catalogue has an aspect for. */
function papersOf(unit: UnitFacts): readonly Paper[] {
  const fields = { maker: unit.maker, model: unit.model, year: unit.year?.toString(), stock: unit.stock };
  return Object.entries(fields).flatMap(([aspect, text]) =>
    text === undefined || text === '' ? [] : [{ aspect, value: { is: 'text', text } as const }],
  );
}

function layPaper(seen: Fact | undefined, paper: Paper): Fact {
  const side = { value: paper.value, evidence: [] };
  if (seen === undefined || seen.standing === 'unknown')
    return {
      part: 'coach',
      aspect: paper.aspect,
      standing: 'known',
      value: paper.value,
      sides: [side],
      doubts: ['on paper only'],
      evidence: seen?.evidence ?? [],
    };
  const aspect = aspectOf('coach', paper.aspect);
  if (seen.sides.some((s) => agree(s.value, paper.value, aspect))) return seen;
  return { ...seen, standing: 'conflict', sides: [...seen.sides, side] };
}

function inRecordOrder(a: Fact, b: Fact): number {
  const keyA = `${a.part}\u0000${a.aspect}\u0000${a.place ?? ''}`;
  const keyB = `${b.part}\u0000${b.aspect}\u0000${b.place ?? ''}`;
  return keyA < keyB ? -1 : keyA > keyB ? 1 : 0;
}
