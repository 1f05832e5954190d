// Why: pictures of parts; photos.csv says what each shows. A picture without a row is kept, and not claimed to show anything.

import { otherNames, partOf } from '../../catalogue/index.ts';
import { isPlace } from '../../catalogue/place.ts';
import type { About, Draft } from './make-entries.ts';
import { missingColumns, readTable } from './read-table.ts';
import { readWhen } from './read-when.ts';
import type { FileFault, WalkFile } from './walk-file.ts';

/** What a row of photos.csv says of a picture. */
export interface PhotoRow {
  readonly part?: string;
  readonly place?: string;
  readonly taken?: string;
  readonly caption?: string;
}
export interface PhotoList {
  /** By the picture's file name without its folder, lower case. */
  readonly rows: ReadonlyMap<string, PhotoRow>;
  readonly faults: readonly FileFault[];
}

const baseName = (path: string): string => (path.split('/').pop() ?? path).toLowerCase();

/** Columns: file, part, place, taken, caption. */
export function readPhotoList(
  text: string,
  file: string,
  photos: readonly WalkFile[],
  about: About,
): PhotoList {
  const table = readTable(text, file);
  const rows = new Map<string, PhotoRow>();
  const missing = missingColumns(table, ['file']);
  if (missing.length > 0)
    return {
      rows,
      faults: [{ file, line: 1, code: 'csv-columns', raw: text.slice(0, 400), detail: 'file' }],
    };
  const there = new Set(photos.map((p) => baseName(p.name)));
  const faults: FileFault[] = [...table.faults];
  for (const { cells, line, raw } of table.rows) {
    const wrong = (code: string, detail: string) => faults.push({ file, line, code, raw, detail });
    const name = cells.file ? baseName(cells.file) : '';
    if (!there.has(name)) {
      wrong('photo-missing', cells.file ?? '');
      continue;
    }
    const other = cells.part ? otherNames[cells.part.toLowerCase()] : undefined;
    const part = other?.part ?? cells.part?.toLowerCase();
    const place = other?.place ?? cells.place?.toLowerCase().replace(/[\s_]+/g, '-');
    const taken = cells.taken ? readWhen(cells.taken, about.at) : undefined;
    if (part && !partOf(part)) wrong('part-unknown', `${cells.part}|`);
    if (place && !isPlace(place))
      wrong('place-unknown', `${cells.place}|${partOf(part ?? '')?.places.join(', ') ?? ''}`);
    if (cells.taken && !taken) wrong('at-unreadable', cells.taken);
    rows.set(name, {
      ...(part && partOf(part) ? { part } : {}),
      ...(place && isPlace(place) ? { place } : {}),
      ...(taken ? { taken } : {}),
      ...(cells.caption ? { caption: cells.caption.slice(0, 20_000) } : {}),
    });
  }
  return { rows, faults };
}

/** The media entry's fields for a picture. */
export const photoFields = (list: PhotoList | undefined, file: WalkFile): PhotoRow & Pick<Draft, never> =>
  list?.rows.get(baseName(file.name)) ?? {};
