// Why: model year, VIN, stock number and trouble codes are read aloud piece by piece.
import type { Clause } from './clause.ts';
import { itemAt } from './number-item.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';
import { nameAt } from './written-name.ts';

/** Notes a name of a thing: part, aspect, text, and the words it turns on. */
export type Put = (
  part: string,
  aspect: string,
  text: string,
  at: number,
  length: number,
  weight: number,
) => void;

/** The first number within twelve words. */
const clauseOrNext = (talk: Talk, to: number): NumberSpan | undefined => {
  for (let i = to; i <= to + 12; i++) {
    const n = talk.marks.numberAt.from(i);
    if (n) return n;
  }
  return undefined;
};

/** "2018 Corvanta Solstrand, the 41 B": year, maker, model and floor plan of the coach. */
export function coachYear(talk: Talk, clause: Clause, put: Put, taken: Uint8Array): void {
  const { words, isName } = talk.marks;
  for (const span of clause.numbers) {
    const year = span.readings.find(
      (r) => Number.isInteger(r.value) && r.value >= 1965 && r.value <= 2040,
    )?.value;
    if (!year || span.unit || talk.scopes.elsewhere[span.from]) continue;
    const after = words[span.to]?.norm ?? '';
    // "a 2006 coach on a 2005 chassis", "the chassis is a 2005"
    const ofChassis =
      (after === 'chassis' && words[span.to - 1]?.stop === 0) ||
      words.slice(Math.max(clause.from, span.from - 4), span.from).some((w) => w.norm === 'chassis');
    if (ofChassis) {
      put('chassis_label', 'chassis_year', String(year), span.from, span.to - span.from + 1, 0.88);
      taken.fill(1, span.from, span.to);
      continue;
    }
    const coachy =
      /^(?:model|motorhome|motor|coach|diesel|fifth|travel|class|camper|rv|toy|super)$/.test(after) ||
      words[span.from - 1]?.norm === 'year';
    let to = span.to;
    while (to < clause.to && to - span.to < 3 && isName(to) && words[to - 1]?.stop === 0) to++;
    const alone =
      span.from === clause.from &&
      span.to === clause.to &&
      span.items[0]?.written?.length === 4 &&
      talk.recent.length === 0;
    if (to === span.to && !coachy && !alone) continue;
    const isChassis = clause.mentions.some((m) => m.parts[0] === 'chassis_label' || m.parts[0] === 'engine');
    if (isChassis && to === span.to) continue;
    put('coach', 'year', String(year), span.from, to - span.from, 0.88);
    taken.fill(1, span.from, span.to);
    if (to === span.to) continue;
    put('coach', 'maker', nameAt(talk, words[span.to]?.written ?? 0), span.to, 1, 0.85);
    if (to - span.to > 1)
      put(
        'coach',
        'model',
        words
          .slice(span.to + 1, to)
          .map((w) => nameAt(talk, w.written))
          .join(' '),
        span.to + 1,
        to - span.to - 1,
        0.8,
      );
    taken.fill(1, span.to, to);
    const next = clauseOrNext(talk, to);
    const letter = next ? words[next.bare] : undefined;
    if (
      next &&
      (next.from === to ||
        words.slice(next.bare, next.bare + 4).some((w) => w.norm === 'plan' || w.norm === 'floorplan')) &&
      !next.unit
    ) {
      const isLetter =
        letter !== undefined && /^[a-z]{1,3}$/.test(letter.norm) && letter.capital && letter.norm.length <= 2;
      put(
        'coach',
        'floor_plan',
        `${next.readings[0]?.value ?? ''}${isLetter ? letter.norm.toUpperCase() : ''}`,
        next.from,
        next.bare - next.from + (isLetter ? 1 : 0),
        0.75,
      );
      taken.fill(1, next.from, next.bare);
    }
  }
}

/** VIN and stock number: letters and digits read aloud. */
export function plates(talk: Talk, clause: Clause, put: Put, taken: Uint8Array): void {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const n = words[i]?.norm;
    const isVin = n === 'vin' || n === 'serial';
    const isStock =
      (n === 'unit' || n === 'stock' || (n === 'number' && words[i - 1]?.norm === 'stock')) &&
      words[i + 1]?.stop !== undefined;
    if (!isVin && !isStock) continue;
    let best: { text: string; from: number; to: number } | undefined;
    for (let k = i + 1; k < Math.min(words.length, i + 9); k++) {
      if (words[k - 1]?.norm === 'last' || (words[k]?.stop === 1 && words[k - 2]?.norm === 'last')) continue;
      let text = '';
      let at = k;
      while (at < words.length && (at === k || words[at - 1]?.stop !== 2 || text.length < 4)) {
        const item = itemAt(words, at);
        if (item && item.kind !== 'fraction' && item.kind !== 'decimal') {
          text += item.written ?? String(item.value);
          at = item.to;
        } else if (/^[a-z]$/.test(words[at]?.norm ?? '') && (words[at]?.capital || text !== ''))
          text += (words[at++]?.norm ?? '').toUpperCase();
        else if (/^[a-z]*\d[a-z0-9]{2,}$/.test(words[at]?.norm ?? ''))
          text += (words[at++]?.norm ?? '').toUpperCase();
        else break;
        if (text.length > 17) break;
      }
      if (text.length >= (isVin ? 5 : 2) && /\d/.test(text) && (!best || text.length > best.text.length))
        best = { text, from: k, to: at };
      if (isStock && k > i + 1) break;
    }
    if (!best) continue;
    if (isStock && (talk.marks.words[best.to]?.norm ?? '') in { of: 1, years: 1 }) continue;
    put(
      isVin ? 'vin_plate' : 'coach',
      isVin ? 'vin' : 'stock',
      best.text,
      best.from,
      best.to - best.from,
      isVin ? 0.85 : 0.7,
    );
    taken.fill(1, i, best.to);
    i = best.to - 1;
  }
}

/** "P oh four five six" -> P0456. */
export function codeAt(talk: Talk, i: number): { text: string; length: number } | undefined {
  const { words } = talk.marks;
  const n = words[i]?.norm ?? '';
  if (/^[pbcu]\d{4}$/.test(n)) return { text: n.toUpperCase(), length: 1 };
  if (!/^[pbcu]$/.test(n) || !words[i]?.capital || words[i]?.stop !== 0) return undefined;
  let text = '';
  let at = i + 1;
  while (at < words.length && text.length < 4) {
    const item = itemAt(words, at);
    if (!item || item.kind === 'fraction' || item.kind === 'decimal') break;
    text += item.written ?? String(item.value);
    at = item.to;
  }
  return text.length === 4 ? { text: n.toUpperCase() + text, length: at - i } : undefined;
}
