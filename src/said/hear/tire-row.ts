// Why: tires are read out corner by corner; what a bare number is follows from what was read at this corner and the one before.
import type { Clause, Draft } from './clause.ts';
import type { RowSoFar, TireReading, Wanted } from './hear-tire.ts';
import { digitString } from './number-reading.ts';
import type { NumberSpan } from './number-span.ts';
import { phraseList } from './phrase-index.ts';
import type { Talk } from './talk.ts';

type Aspect = TireReading['aspect'];

/** The row of readings as far as it was spoken. */
interface Row {
  /** Word of the last reading; far back where there is none. */
  at: number;
  part: string;
  place: string | undefined;
  /** Of one kind, one after another: the row is a list of that kind. */
  run: { aspect: Aspect | undefined; length: number };
  /** Read at the last corner. */
  had: Set<Aspect>;
  readonly codes: { readonly code: string; readonly at: number }[];
}
const rows = new WeakMap<Talk, Row>();
const rowOf = (talk: Talk): Row => {
  const row = rows.get(talk) ?? {
    at: -999,
    part: 'tire',
    place: undefined,
    run: { aspect: undefined, length: 0 },
    had: new Set<Aspect>(),
    codes: [],
  };
  rows.set(talk, row);
  return row;
};

const isTire = (p: string): boolean => p === 'tire' || p === 'spare_tire';
/** Named among tires without a change of talk. */
const beside = (p: string): boolean => isTire(p) || p === 'wheels_lugs' || p === 'tpms';
const brakes = /^(?:brake|brakes|pad|pads|lining|linings|shoe|shoes|rotor|rotors|drum|drums|disc|discs)$/;

/** The tire that a number may be a reading of. */
export function tireOf(
  talk: Talk,
  clause: Clause,
  span: NumberSpan,
  parts: readonly string[],
): string | undefined {
  const near = parts.slice(0, 2).find(isTire);
  if (near) return near;
  if (clause.places.some((p) => p.side && p.depth) && parts.includes('tire')) return 'tire';
  const row = rowOf(talk);
  if (isCornerAlone(talk, clause, span, row.at)) return 'tire';
  const { words, mentionAt } = talk.marks;
  // "the outer is dated 2220"
  const code =
    span.items.length === 1
      ? (span.items[0]?.written ?? '')
      : span.items.length === 4 && !span.unit
        ? (digitString(span.items) ?? '')
        : '';
  if (
    /^(?:0[1-9]|[1-4]\d|5[0-3])(?:0[5-9]|[12]\d)$/.test(code) &&
    clause.places.some((p) => p.depth || (p.side && p.end)) &&
    /^(?:dated|date|code|dot|stamped|is|'s)$/.test(words[span.from - 1]?.norm ?? '') &&
    !parts.slice(0, 1).some((p) => !beside(p) && clause.mentions.some((m) => m.parts.includes(p)))
  )
    return 'tire';
  const inThirtySeconds = span.unit?.units[0] === '[in_i]/32';
  if (span.from - row.at > (inThirtySeconds ? 80 : 24)) {
    if (!inThirtySeconds) return undefined;
    for (let i = span.from - 1; i >= 0 && span.from - i < 30; i--)
      if (brakes.test(words[i]?.norm ?? '')) return undefined;
    return words.slice(span.to, span.to + 6).some((w) => brakes.test(w.norm)) ? undefined : 'tire';
  }
  for (let i = span.from - 1; i > row.at; i--) {
    const m = mentionAt.from(i);
    if (m && !m.aside && !m.weak && !m.parts.some(beside) && !inThirtySeconds) return undefined;
    if (brakes.test(words[i]?.norm ?? '')) return undefined;
  }
  return row.part;
}

/** Things besides tires that are read corner by corner, where a bare number is theirs. */
const cornered =
  /^(?:jack|jacks|leg|legs|bag|bags|airbag|airbags|spring|springs|shock|shocks|chamber|chambers|stroke|slack|slacks|bearing|bearings|hub|hubs|wheel|wheels|lug|lugs|window|windows|seat|seats|weight|weigh|weighed|scale|moisture|slide|slides|awning|speaker|height|temp|temps|temperature|degrees)$/;

/** "Left front? One oh five.": a corner with nothing named reads a tire, if the number can be one's pressure, or inner and outer are told apart. */
function isCornerAlone(talk: Talk, clause: Clause, span: NumberSpan, lastAt: number): boolean {
  const { words, mentionAt, placeAt, clauseOf } = talk.marks;
  const unit = span.unit?.units[0];
  if (unit && unit !== '[psi]' && unit !== '[lb_av]' && unit !== '[in_i]/32') return false;
  if (span.approx && !unit) return false;
  const value = span.readings[0]?.value ?? 0;
  const first = span.items[0]?.value ?? 0;
  const pressure = span.readings.some((r) => r.value >= 50 && r.value <= 135 && Number.isInteger(r.value));
  let depth = false;
  let corner = false;
  // the corner stands in this clause or in the one before, which says no more
  for (let i = clause.from; i < span.from; i++) {
    const p = placeAt.from(i);
    if (p?.depth) depth = true;
    if (p?.side && (p.end || p.depth)) corner = true;
  }
  for (let i = clause.from - 1; i >= 0 && clause.from - i <= 5 && !corner && !depth; i--) {
    const p = placeAt.from(i);
    if (!p || clauseOf[clause.from - 1] !== clauseOf[i]) continue;
    if (p.depth) depth = true;
    if (p.side && (p.end || p.depth)) corner = true;
  }
  if (!corner && !depth) return false;
  if (!(pressure || (depth && value <= 20 && first >= 2))) return false;
  for (let i = span.from - 1; i >= 0 && span.from - i < 40 && i > lastAt - 40; i--) {
    const n = words[i]?.norm ?? '';
    if (cornered.test(n) || brakes.test(n)) return false;
    const m = mentionAt.from(i);
    if (m && !m.aside && !m.weak && !m.parts.some(isTire)) return false;
  }
  return !words.slice(span.to, span.to + 6).some((w) => cornered.test(w.norm) || brakes.test(w.norm));
}

/** True while a row is being read out. */
export const inRow = (talk: Talk, at: number): boolean => {
  const row = rowOf(talk);
  return at > row.at && at - row.at <= 24;
};

/** What is open at the corner that the number belongs to. */
export function rowSoFar(talk: Talk, wants: Wanted, place: string | undefined, at: number): RowSoFar {
  const row = rowOf(talk);
  const fresh = at - row.at > 60;
  const same = !fresh && (place === row.place || place === undefined);
  const listed = !fresh && row.run.length >= 2 && row.run.aspect !== 'tin';
  const only = listed ? row.run.aspect : [...row.had][0];
  const likely: Wanted =
    listed || (!fresh && !same && row.had.size === 1)
      ? only === 'tread_mid'
        ? 'tread'
        : only === 'pressure_cold'
          ? 'pressure'
          : undefined
      : undefined;
  return { wants, had: same && !listed ? row.had : new Set(), ...(likely ? { likely } : {}) };
}

/** Takes a reading down. */
export function noteTire(talk: Talk, part: string, r: TireReading, place: string | undefined): void {
  const row = rowOf(talk);
  if (r.from - row.at > 60 || place !== row.place) row.had = new Set();
  row.at = r.to;
  row.part = part;
  row.place = place;
  row.run =
    r.aspect === row.run.aspect
      ? { aspect: r.aspect, length: row.run.length + 1 }
      : { aspect: r.aspect, length: 1 };
  row.had.add(r.aspect);
  if (r.aspect === 'tin' && typeof r.value === 'string') row.codes.push({ code: r.value, at: r.from });
}

const sames = phraseList(
  ['week', 'date', 'date code', 'code', 'dot', 'batch', 'dates', 'codes', 'vintage', 'birthday']
    .flatMap((w) => [`same ${w}`, `same exact ${w}`, `identical ${w}`, `matching ${w}`])
    .concat([
      'ditto on the date',
      'date is the same',
      'date the same',
      'code is the same',
      "date 's the same",
      "code 's the same",
    ]),
);

/** "Right front, same week": the code said before, at the new corner. */
export function hearSameWeek(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const row = rowOf(talk);
  const out: Draft[] = [];
  if (row.codes.length === 0) return out;
  for (let i = clause.from; i < clause.to; i++) {
    const hit = sames.at(talk.marks.words, i);
    if (!hit || taken[i] || talk.scopes.elsewhere[i] || talk.scopes.denied[i]) continue;
    const last = row.codes.filter((c) => c.at < i).at(-1);
    if (!last || i - last.at > 90 || row.codes.some((c) => c.at > i && c.at - i < 8)) continue;
    const next = [0, 1, 2, 3, 4].map((k) => talk.marks.numberAt.from(i + k)).find((n) => n !== undefined);
    if (next && next.from - i <= 4 && next.items.length > 0 && codeFollows(next)) continue;
    const part = 'tire';
    const place = talk.placeOf(part, i, clause);
    const doubt = talk.doubtAt(i);
    out.push({
      part,
      ...(place === undefined ? {} : { place }),
      aspect: 'tin',
      value: { is: 'text', text: last.code },
      sense: 'identity',
      polarity: 'neutral',
      ...doubt,
      from: Math.max(clause.from, i - 5),
      to: Math.min(clause.to, i + hit.length),
      at: i,
      weight: 0.8,
    });
    taken.fill(1, i, i + hit.length);
    noteTire(talk, part, { aspect: 'tin', value: last.code, from: i, to: i + hit.length }, place);
  }
  return out;
}

/** True when the number said next spells the code out anyway. */
const codeFollows = (n: NumberSpan): boolean =>
  (n.items.length >= 2 && n.items.slice(0, 2).every((x) => x.kind === 'small')) ||
  n.items[0]?.kind === 'oh' ||
  (n.items[0]?.written?.length ?? 0) >= 3;
