// Why: short pieces of talk with what they say of the coach, one battery for each field; quicker to write and to mend by than whole walks.
import { readFileSync } from 'node:fs';
import { hear } from '../../src/said/hear/hear.ts';
import { type HearRow, hearJson } from '../../src/said/hear/hear-json.ts';

/** A fact that a piece says: parts it may stand under, its kind, and what else must be right. */
interface Told {
  readonly line: number;
  readonly text: string;
  readonly parts: readonly string[];
  readonly kind: string;
  readonly value?: string;
  readonly place?: string;
  readonly hedged: boolean;
  readonly good?: boolean;
}

interface Piece {
  readonly line: number;
  readonly said: string;
  readonly told: readonly Told[];
}

/** How a battery fared. `places` is over matched facts that have one. */
export interface SaidScore {
  readonly facts: number;
  readonly found: number;
  readonly extra: number;
  readonly recall: number;
  readonly precision: number;
  readonly places: number;
  readonly faults: readonly string[];
}

/**
 * Reads a battery. A piece is a line of talk; the facts it says follow, indented:
 *
 *     part|other-part kind [value [unit]] [@place words] [hedged]
 *
 * kind: quantity, identity, defect, operates, absent, good, neutral, unknown; two with a bar where either is right. A piece without facts says nothing of the coach.
 */
export function readBattery(text: string): Piece[] {
  const pieces: { line: number; said: string; told: Told[] }[] = [];
  text.split('\n').forEach((raw, i) => {
    if (raw.trim() === '' || raw.startsWith('#')) return;
    if (!/^\s/.test(raw)) {
      pieces.push({ line: i + 1, said: raw.trim(), told: [] });
      return;
    }
    const hedged = /\bhedged\s*$/.test(raw);
    const [left = '', place] = raw
      .trim()
      .replace(/\s*\bhedged$/, '')
      .split(/\s+@/);
    const [parts = '', kind = '', ...value] = left.trim().split(/\s+/);
    pieces.at(-1)?.told.push({
      line: i + 1,
      text: raw.trim(),
      parts: parts.split('|'),
      kind,
      ...(value.length > 0 ? { value: value.join(' ') } : {}),
      ...(place === undefined ? {} : { place: place.trim() }),
      hedged,
    });
  });
  return pieces;
}

const plain = (s: unknown): string =>
  String(s)
    .toLowerCase()
    .replace(/[^a-z0-9.]/g, '');

/** The words of a place; the driver's side of anything is its left. */
const placeWords = (place: string): string[] =>
  (place.toLowerCase().match(/[a-z0-9]+/g) ?? []).map((w) =>
    w === 'driver' ? 'left' : w === 'passenger' ? 'right' : w,
  );

/** Whether an observation says the fact; place and hedge are counted apart. */
function isSaid(t: Told, o: HearRow): boolean {
  if (!t.parts.includes(o.part)) return false;
  return t.kind.split('|').some((wanted) => isOfKind(wanted, t, o));
}

function isOfKind(wanted: string, t: Told, o: HearRow): boolean {
  const kind = o.kind;
  switch (wanted) {
    case 'quantity': {
      const [number = '', unit] = (t.value ?? '').split(' ');
      const want = Number(number);
      const have = Number(o.value);
      return (
        (kind === 'quantity' || kind === 'identity') &&
        Math.abs(have - want) <= Math.abs(want) * 0.01 + 1e-9 &&
        (unit === undefined || o.unit === unit || plain(o.unit ?? '') === plain(unit))
      );
    }
    case 'identity':
      return kind === 'identity' && plain(o.value).includes(plain(t.value ?? ''));
    case 'good':
      return (kind === 'condition' && o.polarity !== 'bad') || kind === 'operates' || kind === 'absent';
    case 'neutral':
      return kind === 'condition';
    case 'operates':
      return kind === 'operates' || (kind === 'condition' && o.polarity === 'good');
    default:
      return kind === wanted;
  }
}

/** Hears every piece by itself and compares. */
export function scoreBattery(text: string): SaidScore {
  let facts = 0;
  let found = 0;
  let extra = 0;
  let placed = 0;
  let placedRight = 0;
  const faults: string[] = [];
  for (const piece of readBattery(text)) {
    const end = piece.said.split(/\s+/).length * 0.4;
    const rows = hearJson(hear([{ start: 0, end, text: piece.said }])).filter(
      (r) => r.kind !== 'claim' && !r.retracted,
    );
    const free = new Set(rows);
    facts += piece.told.length;
    for (const t of piece.told) {
      const hits = [...free].filter((r) => isSaid(t, r));
      const want = t.place?.toLowerCase() ?? '';
      const hit =
        hits.find(
          (r) => want !== '' && placeWords(want).every((w) => placeWords(r.place ?? '').includes(w)),
        ) ?? hits[0];
      if (!hit) {
        faults.push(`${t.line} missed "${piece.said}": ${t.text}`);
        continue;
      }
      free.delete(hit);
      found++;
      if (want !== '') {
        placed++;
        if (placeWords(want).every((w) => placeWords(hit.place ?? '').includes(w))) placedRight++;
        else faults.push(`${t.line} place "${piece.said}": ${t.text}, heard ${hit.place ?? 'none'}`);
      }
      if (t.hedged && !hit.hedged) faults.push(`${t.line} not hedged "${piece.said}": ${t.text}`);
    }
    for (const r of free) {
      // the same fact once more is no other fact
      if (piece.told.some((t) => isSaid(t, r))) continue;
      extra++;
      faults.push(
        `${piece.line} extra "${piece.said}": ${r.part} ${r.kind} ${r.aspect} ${r.value ?? ''} ${r.unit ?? ''} ${r.place ?? ''}`,
      );
    }
  }
  return {
    facts,
    found,
    extra,
    recall: found / Math.max(1, facts),
    precision: found / Math.max(1, found + extra),
    places: placedRight / Math.max(1, placed),
    faults,
  };
}

/** A battery of test/data/said, or any file. */
export const readSaid = (file: string | URL): string => readFileSync(file, 'utf8');
