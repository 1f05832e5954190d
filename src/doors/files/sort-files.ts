// Why: people drop files under any name; what each one is for is told by its name, then by its ending, then by its columns.
import type { EntryOf } from '../../said/entry.ts';
import type { WalkFile } from './walk-file.ts';

type Role = EntryOf<'media'>['role'];
/** Files of a walk by what they are for. At most one of each kind is read; the others are only kept. */
export interface Sorted {
  readonly unit?: WalkFile;
  readonly walk?: WalkFile;
  readonly readings?: WalkFile;
  readonly photoList?: WalkFile;
  readonly drive?: WalkFile;
  readonly motion?: WalkFile;
  readonly comparables?: WalkFile;
  readonly shop?: WalkFile;
  readonly recordings: readonly WalkFile[];
  readonly photos: readonly WalkFile[];
  /** Of a kind that is read, but another was taken. */
  readonly second: readonly WalkFile[];
  readonly others: readonly WalkFile[];
}

const named: Readonly<Record<string, keyof Sorted>> = {
  'unit.json': 'unit',
  'walk.vtt': 'walk',
  'walk.srt': 'walk',
  'walk.json': 'walk',
  'walk.txt': 'walk',
  'readings.csv': 'readings',
  'photos.csv': 'photoList',
  'drive.gpx': 'drive',
  'motion.csv': 'motion',
  'comps.csv': 'comparables',
  'shop.json': 'shop',
};
const byColumns: readonly (readonly [needed: readonly string[], kind: keyof Sorted])[] = [
  [['part', 'aspect', 'value'], 'readings'],
  [['t', 'ax', 'ay', 'az'], 'motion'],
  [['ref', 'on', 'kind', 'year'], 'comparables'],
  [['file', 'part'], 'photoList'],
];
const sound = /\.(mp4|m4v|mov|webm|mkv|mp3|m4a|aac|ogg|oga|opus|wav|flac|3gp)$/i;
const picture = /\.(jpe?g|png|webp|avif|gif|heic|heif|tiff?)$/i;

const baseName = (path: string): string => (path.split('/').pop() ?? path).toLowerCase();
/** Larger tables are known by name only. */
const sniffLimit = 4 * 1024 * 1024;

async function kindOf(file: WalkFile): Promise<keyof Sorted> {
  const base = baseName(file.name);
  const byName = Object.hasOwn(named, base) ? named[base] : undefined;
  if (byName) return byName;
  if (picture.test(base)) return 'photos';
  if (sound.test(base)) return 'recordings';
  if (/\.(vtt|srt)$/.test(base)) return 'walk';
  if (/\.gpx$/.test(base)) return 'drive';
  if (/\.csv$/.test(base) && file.size <= sniffLimit) {
    const head = await file.text().then(
      (t) => (t.split(/\r?\n/, 1)[0] ?? '').replace(/^\ufeff/, '').toLowerCase(),
      () => '',
    );
    const columns = head.split(/[,;\t]/).map((c) => c.trim().replace(/^"|"$/g, ''));
    const found = byColumns.find(([needed]) => needed.every((n) => columns.includes(n)));
    if (found) return found[1];
  }
  return 'others';
}

/** A file with the house's own name goes before one that only looks like it; WebVTT before the other transcripts. */
const rank = (file: WalkFile): number => {
  const at = Object.keys(named).indexOf(baseName(file.name));
  return at < 0 ? 1000 : at;
};

export async function sortFiles(files: readonly WalkFile[]): Promise<Sorted> {
  const one: Partial<Record<keyof Sorted, WalkFile>> = {};
  const lists = {
    recordings: [] as WalkFile[],
    photos: [] as WalkFile[],
    second: [] as WalkFile[],
    others: [] as WalkFile[],
  };
  const ordered = files.toSorted(
    (a, b) => rank(a) - rank(b) || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0),
  );
  for (const file of ordered) {
    const kind = await kindOf(file);
    if (kind === 'recordings' || kind === 'photos' || kind === 'others') lists[kind].push(file);
    else if (one[kind]) lists.second.push(file);
    else one[kind] = file;
  }
  return { ...(one as Omit<Sorted, keyof typeof lists>), ...lists };
}

/** The role under which the log keeps a file. */
export function roleOf(sorted: Sorted, file: WalkFile): Role {
  if (file === sorted.unit) return 'paper';
  if (file === sorted.walk) return 'transcript';
  if (file === sorted.readings) return 'readings';
  if (file === sorted.drive) return 'drive';
  if (file === sorted.motion) return 'motion';
  if (file === sorted.comparables) return 'comparables';
  if (file === sorted.shop) return 'shop';
  if (sorted.recordings.includes(file)) return 'recording';
  return sorted.photos.includes(file) ? 'photo' : 'other';
}

const types: Readonly<Record<string, string>> = {
  vtt: 'text/vtt',
  srt: 'application/x-subrip',
  json: 'application/json',
  txt: 'text/plain',
  csv: 'text/csv',
  gpx: 'application/gpx+xml',
  pdf: 'application/pdf',
  mp4: 'video/mp4',
  m4v: 'video/mp4',
  mov: 'video/quicktime',
  webm: 'video/webm',
  mkv: 'video/x-matroska',
  '3gp': 'video/3gpp',
  mp3: 'audio/mpeg',
  m4a: 'audio/mp4',
  aac: 'audio/aac',
  ogg: 'audio/ogg',
  oga: 'audio/ogg',
  opus: 'audio/ogg',
  wav: 'audio/wav',
  flac: 'audio/flac',
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
  png: 'image/png',
  webp: 'image/webp',
  avif: 'image/avif',
  gif: 'image/gif',
  heic: 'image/heic',
  heif: 'image/heif',
  tif: 'image/tiff',
  tiff: 'image/tiff',
};
/** Media type by ending; what could run in a browser (HTML, SVG, scripts) and what is not known is plain bytes. */
export const typeOf = (name: string): string =>
  types[/\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase() ?? ''] ?? 'application/octet-stream';
