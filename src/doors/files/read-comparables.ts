// Why: comps.csv: units offered or sold elsewhere, in the dealership's own list. Blank cells stay unknown.
import { vehicleKinds } from '../../catalogue/vehicle-kind.ts';
import type { Comparable } from '../../said/entry.ts';
import { readDay } from '../../units/day.ts';
import { sayRows } from '../words/say-account.ts';
import { missingColumns, type Row, readTable } from './read-table.ts';
import type { Reader, Reading } from './reading.ts';
import type { FileFault } from './walk-file.ts';

const mostRows = 20_000;
const number = /^\d{1,12}(\.\d{1,9})?$/;
/** Column -> field of the entry: plain numbers. */
const numbers = {
  length_ft: 'lengthFt',
  miles: 'miles',
  slides: 'slides',
  hp: 'powerHp',
  generator_hours: 'generatorHours',
  miles_away: 'milesAway',
} as const;
/** Column -> field of the entry: dollars, kept in whole cents. */
const moneys = { ask: 'askCents', sold: 'soldCents' } as const;

/** Columns: ref, on, kind, year, length_ft, miles, slides, hp, generator_hours, ask, sold, state, miles_away, condition. */
export function readComparables({ file, text }: Reader): Reading {
  const table = readTable(text, file.name);
  const missing = missingColumns(table, ['ref', 'on', 'kind', 'year']);
  if (missing.length > 0) {
    return {
      drafts: [],
      faults: [
        {
          file: file.name,
          line: 1,
          code: 'csv-columns',
          raw: text.slice(0, 400),
          detail: missing.join(', '),
        },
      ],
      account: [],
    };
  }
  const rows: Comparable[] = [];
  const faults: FileFault[] = [...table.faults];
  for (const row of table.rows) {
    const read = readRow(row);
    if ('code' in read) faults.push({ file: file.name, line: row.line, raw: row.raw, ...read });
    else if (rows.length >= mostRows)
      faults.push({
        file: file.name,
        line: row.line,
        raw: row.raw,
        code: 'too-many-rows',
        detail: String(mostRows),
      });
    else rows.push(read);
  }
  return {
    drafts: rows.length > 0 ? [{ kind: 'comparables', media: file.media.id, rows }] : [],
    faults,
    account: [sayRows(file.name, 'comparable unit', rows.length, faults.length)],
  };
}

function readRow({ cells }: Row): Comparable | { code: string; detail: string } {
  if (!cells.ref) return { code: 'cell-missing', detail: 'ref' };
  const on = readDay(cells.on ?? '');
  if (!on) return { code: 'cell-wrong', detail: `on|${cells.on ?? ''}|a day YYYY-MM-DD` };
  const vehicle = vehicleKinds.find((k) => k === cells.kind);
  if (!vehicle) return { code: 'cell-wrong', detail: `kind|${cells.kind ?? ''}|${vehicleKinds.join(', ')}` };
  if (!/^(19|20)\d\d$/.test(cells.year ?? ''))
    return { code: 'cell-wrong', detail: `year|${cells.year ?? ''}|a year such as 2016` };
  const found: Record<string, number> = {};
  for (const [column, field] of Object.entries(numbers)) {
    const cell = cells[column];
    if (cell === undefined) continue;
    const isWhole = column === 'slides';
    if (!number.test(cell) || (isWhole && !Number.isInteger(Number(cell))))
      return {
        code: 'cell-wrong',
        detail: `${column}|${cell}|a ${isWhole ? 'whole ' : ''}number without commas`,
      };
    found[field] = Number(cell);
  }
  for (const [column, field] of Object.entries(moneys)) {
    const cell = cells[column];
    if (cell === undefined) continue;
    if (!number.test(cell))
      return { code: 'cell-wrong', detail: `${column}|${cell}|dollars as a plain number` };
    found[field] = Math.round(Number(cell) * 100);
  }
  return {
    ref: cells.ref.slice(0, 400),
    on,
    vehicle,
    year: Number(cells.year),
    ...found,
    ...(cells.state ? { state: cells.state.slice(0, 40) } : {}),
    ...(cells.condition ? { condition: cells.condition.slice(0, 400) } : {}),
  };
}
