// Why: model year, VIN, stock number and trouble codes are read aloud piece by piece.
import type { Clause } from './clause.ts';
import { made } from './made.ts';
import { isNameLike } from './name-like.ts';
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

const asksDigits = /^(?:last|final)$/;
const counts = /^(?:three|four|five|six|seven|eight|3|4|5|6|7|8|digits|numbers|of|few|bit|part)$/;
/** "ends in", "the last six are", "the tail": the end of a number of the kind named shortly before. */
function isTail(talk: Talk, i: number): boolean {
  const { words } = talk.marks;
  const n = words[i]?.norm ?? '';
  const next = words[i + 1]?.norm ?? '';
  const opens =
    (/^(?:ends|ending|end)$/.test(n) && (/^(?:in|with)$/.test(next) || itemAt(words, i + 1) !== undefined)) ||
    (asksDigits.test(n) && counts.test(next)) ||
    (n === 'tail' && words[i - 1]?.norm === 'the' && (words[i]?.stop === 1 || /^(?:is|'s|of)$/.test(next)));
  if (!opens) return false;
  return words
    .slice(Math.max(0, i - 24), i + 6)
    .some((w) => /^(?:vin|serial|identification|plate)$/.test(w.norm));
}

/** The part whose serial number is read, where it is not that of the coach. */
function serialOf(talk: Talk, clause: Clause, i: number): string | undefined {
  const { words } = talk.marks;
  if (words.slice(Math.max(0, i - 24), i + 6).some((w) => w.norm === 'vin')) return undefined;
  const own = clause.mentions.find((m) => made.test(m.parts[0] ?? ''));
  if (own) return own.parts[0];
  const last = talk.recent.find((r) => i - r.at < 30 && !r.parts.includes('vin_plate'));
  return last?.parts.find((p) => made.test(p));
}

/** VIN and stock number: letters and digits read aloud. */
export function plates(talk: Talk, clause: Clause, put: Put, taken: Uint8Array): void {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const n = words[i]?.norm;
    const tail = isTail(talk, i);
    const isVin = n === 'vin' || n === 'serial' || tail;
    const isStock =
      (n === 'unit' || n === 'stock' || (n === 'number' && words[i - 1]?.norm === 'stock')) &&
      words[i + 1]?.stop !== undefined;
    if ((!isVin && !isStock) || (tail && taken[i])) continue;
    let best: { text: string; from: number; to: number } | undefined;
    for (let k = i + 1; k < Math.min(words.length, i + 10); k++) {
      if (
        /^(?:last|final)$/.test(words[k - 1]?.norm ?? '') ||
        (words[k]?.stop === 1 && words[k - 2]?.norm === 'last')
      )
        continue;
      let text = '';
      let at = k;
      while (at < words.length && (at === k || words[at - 1]?.stop !== 2 || text.length < 4)) {
        const item = itemAt(words, at);
        if (item && item.kind !== 'fraction' && item.kind !== 'decimal') {
          // the next number is the year before the maker's name
          if (isStock && text !== '' && item.value >= 10 && isNameLike(talk, item.to)) break;
          text += item.written ?? String(item.value);
          at = item.to;
        } else if (/^[a-z]$/.test(words[at]?.norm ?? '') && (words[at]?.capital || text !== ''))
          text += (words[at++]?.norm ?? '').toUpperCase();
        else if (/^[a-z]*\d[a-z0-9]{2,}$/.test(words[at]?.norm ?? ''))
          text += (words[at++]?.norm ?? '').toUpperCase();
        else break;
        if (text.length > 17) break;
      }
      if (
        text.length >= (tail ? 4 : isVin ? 5 : 2) &&
        /\d/.test(text) &&
        (!best || text.length > best.text.length)
      )
        best = { text, from: k, to: at };
      if (isStock && k > i + 1) break;
    }
    if (!best) continue;
    if (isStock && (talk.marks.words[best.to]?.norm ?? '') in { of: 1, years: 1 }) continue;
    const owner = isVin && (n === 'serial' || tail) ? serialOf(talk, clause, i) : undefined;
    put(
      owner ?? (isVin ? 'vin_plate' : 'coach'),
      owner ? 'serial' : isVin ? 'vin' : 'stock',
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
