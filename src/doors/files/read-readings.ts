// Why: readings.csv: what was measured or noted by hand, a row each. A bad row is a puzzle; the good ones are kept.
import { sayRows } from '../words/say-account.ts';
import type { Draft } from './make-entries.ts';
import { missingColumns, type Row, readTable } from './read-table.ts';
import { readSubject, readValue, senseOf, surenessOf } from './read-value.ts';
import { readWhen } from './read-when.ts';
import type { Reader, Reading } from './reading.ts';
import type { FileFault } from './walk-file.ts';

/** A number typed from a gauge is believed, but for slips of the pen (house default, no source). */
const sureOfTyped = 0.95;
/** A table of something else altogether has a misspelt part in every row. */
const mostSuggested = 100;

/** Columns: at, part, place, aspect, value, unit, plus_or_minus, by, note. Only part, aspect and value must be there. */
export function readReadings({ file, text, about }: Reader): Reading {
  const table = readTable(text, file.name);
  const missing = missingColumns(table, ['part', 'aspect', 'value']);
  if (missing.length > 0) {
    const fault = {
      file: file.name,
      line: 1,
      code: 'csv-columns',
      raw: text.slice(0, 400),
      detail: missing.join(', '),
    };
    return { drafts: [], faults: [fault], account: [] };
  }
  const drafts: Draft[] = [];
  const faults: FileFault[] = [...table.faults];
  for (const row of table.rows) {
    const read = readRow(row);
    if ('detail' in read) faults.push({ file: file.name, line: row.line, raw: row.raw, ...read });
    else drafts.push(read);
  }
  return { drafts, faults, account: [sayRows(file.name, 'reading', drafts.length, faults.length)] };

  function readRow({ cells }: Row): Draft | { code: string; detail: string } {
    const at = cells.at === undefined ? about.at : readWhen(cells.at, about.at);
    if (at === undefined) return { code: 'at-unreadable', detail: cells.at ?? '' };
    if (!cells.part) return { code: 'part-missing', detail: '' };
    if (!cells.aspect) return { code: 'aspect-missing', detail: '' };
    const subject = readSubject(cells.part, cells.aspect, cells.place, faults.length < mostSuggested);
    if ('code' in subject) return subject;
    const value = readValue(subject.aspect, {
      ...(cells.value === undefined ? {} : { value: cells.value }),
      ...(cells.unit === undefined ? {} : { unit: cells.unit }),
      ...(cells.plus_or_minus === undefined ? {} : { plusOrMinus: cells.plus_or_minus }),
      ...(cells.note === undefined ? {} : { note: cells.note }),
    });
    if ('code' in value) return value;
    return {
      kind: 'observation',
      walk: about.walk,
      part: subject.part,
      aspect: subject.aspect.id,
      value,
      ...senseOf(subject.aspect, value),
      hedged: false,
      sure: surenessOf(subject.aspect, value, sureOfTyped),
      source: { from: 'typed', note: file.name },
      at,
      by: (cells.by ?? about.by).slice(0, 400),
      ...(subject.place === undefined ? {} : { place: subject.place }),
      ...(cells.note === undefined ? {} : { note: cells.note.slice(0, 20_000) }),
    };
  }
}
