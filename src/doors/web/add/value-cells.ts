// Why: what is typed for a value, kept as typed until it is read, and read with a sentence for whatever cannot be.
import type { Aspect } from '../../../catalogue/part.ts';
import { stateWords } from '../../../catalogue/state.ts';
import type { Value } from '../../../said/entry.ts';
import { isUnit, type Unit, unitCodes, unitFact } from '../../../units/unit.ts';
import { type Reading, readReading } from './read-reading.ts';

export interface Cells {
  readonly value: string;
  readonly unit: string;
  readonly plusOrMinus: string;
  readonly of: string;
  /** Why it is not known; the value then is that it is unknown. */
  readonly why: string | undefined;
}

export const emptyCells: Cells = { value: '', unit: '', plusOrMinus: '', of: '', why: undefined };

/** What an existing value looks like as typed. */
export function cellsOf(value: Value): Cells {
  switch (value.is) {
    case 'quantity':
      return {
        ...emptyCells,
        value: value.upTo === undefined ? String(value.value) : `${value.value} to ${value.upTo}`,
        unit: value.unit,
        plusOrMinus: value.plusOrMinus === undefined ? '' : String(value.plusOrMinus),
      };
    case 'count':
      return {
        ...emptyCells,
        value: String(value.count),
        of: value.of === undefined ? '' : String(value.of),
      };
    case 'text':
      return { ...emptyCells, value: value.text };
    case 'state':
      return { ...emptyCells, value: value.state };
    case 'unknown':
      return { ...emptyCells, why: value.why };
  }
}

/** How an aspect is asked for on screen. */
export type Shape = 'number' | 'count' | 'yes or no' | 'state' | 'choice' | 'date' | 'words';

export function shapeOf(aspect: Aspect): Shape {
  switch (aspect.kind) {
    case 'quantity':
      return 'number';
    case 'count':
      return 'count';
    case 'yes-no':
      return 'yes or no';
    case 'condition':
      return 'state';
    case 'choice':
      return 'choice';
    case 'date':
      return 'date';
    default:
      return 'words';
  }
}

/** Units of the aspect's own dimension, its own unit first. */
export function unitsFor(aspect: Aspect): readonly Unit[] {
  const own = aspect.unit ?? '1';
  return [own, ...unitCodes.filter((u) => u !== own && unitFact(u).dimension === unitFact(own).dimension)];
}

const numberOf = (text: string): number | undefined => {
  const plain = text.trim().replace(/,(?=\d{3}\b)/g, '');
  return /^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(plain) ? Number(plain) + 0 : undefined;
};

/** Reads the cells: a value of the log, or what is wrong with them as a sentence. */
export function readCells(
  aspect: Aspect,
  cells: Cells,
): { readonly value: Value } | { readonly trouble: string } {
  if (cells.why !== undefined) {
    const why = cells.why.trim();
    return why === ''
      ? { trouble: 'Say why it could not be seen; the buyer will be told.' }
      : { value: { is: 'unknown', why: why.slice(0, 400) } };
  }
  const said = cells.value.trim();
  if (said === '')
    return { trouble: 'Nothing is written yet. If you could not see it, say so: that counts too.' };
  switch (shapeOf(aspect)) {
    case 'number':
      return readNumber(aspect, cells);
    case 'count': {
      const count = numberOf(said);
      const of = cells.of.trim() === '' ? undefined : numberOf(cells.of);
      if (count === undefined || !Number.isInteger(count) || count < 0)
        return { trouble: `“${said}” is not a whole number.` };
      if (cells.of.trim() !== '' && (of === undefined || !Number.isInteger(of) || of < count))
        return { trouble: 'The “out of” must be a whole number, and not the smaller one.' };
      return { value: of === undefined ? { is: 'count', count } : { is: 'count', count, of } };
    }
    case 'yes or no':
    case 'state': {
      const state = stateWords.find((s) => s === said);
      return state ? { value: { is: 'state', state } } : { value: { is: 'text', text: said } };
    }
    default:
      return { value: { is: 'text', text: said.slice(0, 2000) } };
  }
}

function readNumber(
  aspect: Aspect,
  cells: Cells,
): { readonly value: Reading & { readonly is: 'quantity' } } | { readonly trouble: string } {
  const own = aspect.unit ?? '1';
  const read = readReading(cells.value, own, isUnit(cells.unit) ? cells.unit : own, aspect.name);
  if ('trouble' in read) return read;
  const doubt = cells.plusOrMinus.trim() === '' ? undefined : numberOf(cells.plusOrMinus);
  if (cells.plusOrMinus.trim() !== '' && (doubt === undefined || doubt < 0))
    return { trouble: 'The plus or minus must be a number, not below zero.' };
  return {
    value: { is: 'quantity', ...(doubt === undefined ? {} : { plusOrMinus: doubt }), ...read.reading },
  };
}

/** What the cells hold as a reading, where they hold one; else what is wrong with it. */
export function readingIn(aspect: Aspect, cells: Cells): Reading | string | undefined {
  if (shapeOf(aspect) !== 'number' || cells.why !== undefined || cells.value.trim() === '') return undefined;
  const read = readNumber(aspect, cells);
  return 'trouble' in read ? read.trouble : read.value;
}
