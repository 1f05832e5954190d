// Why: model year, VIN, stock number and trouble codes are read aloud piece by piece.
import type { Clause } from './clause.ts';
import { itemAt } from './number-item.ts';
import type { Talk } from './talk.ts';

/** Notes a name of a thing: part, aspect, text, and the words it turns on. */
export type Put = (
  part: string,
  aspect: string,
  text: string,
  at: number,
  length: number,
  weight: number,
) => void;

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
