// Why: CSV as people's spreadsheets save it; a broken row is named by its line and costs no other row.
import Papa from 'papaparse';
import type { FileFault } from './walk-file.ts';

/** One row below the header. `cells` by column name, trimmed; a column that is not there is absent. */
export interface Row {
  readonly line: number;
  readonly raw: string;
  readonly cells: Readonly<Record<string, string>>;
}

export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly Row[];
  readonly faults: readonly FileFault[];
}

/** After so many quotes that never close, the rest of a file is kept as one puzzle. */
const mostRestarts = 50;
const columnName = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, '_');
const countLines = (text: string): number => text.split('\n').length - 1;

/**
 * Reads a CSV text with a header row. Comma, semicolon or tab, as the header has it. Lines count from 1.
 * Faults: csv-quote (a quote never closes), csv-cells (more or fewer cells than columns).
 */
export function readTable(text: string, file: string): Table {
  const clean = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const headerEnd = clean.indexOf('\n');
  const header = headerEnd < 0 ? clean : clean.slice(0, headerEnd);
  const delimiter = [',', ';', '\t'].reduce(
    (best, d) => (header.split(d).length > header.split(best).length ? d : best),
    ',',
  );
  const columns = (Papa.parse<string[]>(header, { delimiter }).data[0] ?? []).map(columnName);
  const rows: Row[] = [];
  const faults: FileFault[] = [];
  let from = headerEnd < 0 ? clean.length : headerEnd + 1;
  let line = 2;
  for (let restarts = 0; from < clean.length; restarts++) {
    const rest = clean.slice(from);
    let done = 0;
    let broken = false;
    Papa.parse<string[]>(rest, {
      delimiter,
      newline: '\n',
      step(result, parser) {
        const end = result.meta.cursor;
        const raw = rest.slice(done, end).replace(/\n$/, '');
        if (result.errors.some((e) => e.type === 'Quotes')) {
          broken = true;
          parser.abort();
          return;
        }
        if (raw.trim() !== '') take(result.data, raw);
        line += countLines(rest.slice(done, end));
        done = end;
      },
    });
    if (!broken) break;
    const lineEnd = rest.indexOf('\n', done);
    const last = restarts >= mostRestarts || lineEnd < 0;
    faults.push({ file, line, code: 'csv-quote', raw: last ? rest.slice(done) : rest.slice(done, lineEnd) });
    if (last) break;
    from += lineEnd + 1;
    line += 1;
  }
  return { columns, rows, faults };

  function take(cells: readonly string[], raw: string): void {
    const extra = cells.slice(columns.length).some((c) => c.trim() !== '');
    if (extra || (cells.length < columns.length && cells.length < 2)) {
      faults.push({
        file,
        line,
        code: 'csv-cells',
        raw,
        detail: `${cells.length} cells, ${columns.length} columns`,
      });
      return;
    }
    const named: Record<string, string> = Object.create(null);
    columns.forEach((c, i) => {
      const cell = cells[i]?.trim();
      if (cell) named[c] = cell;
    });
    rows.push({ line, raw, cells: named });
  }
}

/** The columns of a table that are wanted and not there. */
export const missingColumns = (table: Table, wanted: readonly string[]): readonly string[] =>
  wanted.filter((c) => !table.columns.includes(c));
