// Why: a number as spoken: its pieces, every reading, the unit beside it, and how exact the speaker meant it.
import type { Unit } from '../../units/unit.ts';
import { isApprox } from './number-doubt.ts';
import { andFraction, itemAt, type NumberItem, pointTail } from './number-item.ts';
import { type Reading, readingsOf } from './number-reading.ts';
import { joinedTo, type Plain, thirtySeconds, unitAt } from './number-unit.ts';
import { isNumbered } from './numbered.ts';
import { type SaidUnit, unitAfterAn, unitWords } from './unit-words.ts';
import type { Word } from './word.ts';

/** A number in the stream. Word indexes; `to` is one past the last word, the unit included. */
export interface NumberSpan {
  readonly from: number;
  /** One past the number itself. */
  readonly bare: number;
  readonly to: number;
  readonly items: readonly NumberItem[];
  readonly readings: readonly Reading[];
  readonly unit?: SaidUnit;
  /** Upper end of "five to six". */
  readonly upTo?: readonly Reading[];
  /** The second of "twenty-two by three". */
  readonly by?: readonly Reading[];
  /** "one of four". */
  readonly of?: number;
  readonly approx: boolean;
  readonly money: boolean;
}

const moneyAfter = new Set(['dollar', 'dollars', 'bucks', 'buck', 'cents', 'usd', 'euros']);

/** The run of pieces that begins at `i`; it ends at a stop, a unit or a word that is no number. */
function runAt(words: readonly Word[], i: number): NumberItem[] {
  const items: NumberItem[] = [];
  let at = i;
  while (at < words.length && items.length < 12) {
    if (items.length > 0) {
      if (!joinedTo(words, at)) break;
      const unit = thirtySeconds.at(words, at);
      if (unit && (items.at(-1)?.value ?? 99) <= 32) break;
    }
    const item = itemAt(words, at);
    if (!item || (item.kind === 'fraction' && items.length > 0 && item.value >= 1)) break;
    // "four six-volt": a number written as one word with its unit stands alone
    if (
      items.length > 0 &&
      words[item.to]?.written === words[item.to - 1]?.written &&
      words[item.to - 1]?.written !== words[at - 1]?.written
    )
      break;
    const first = items[0];
    if (item.kind === 'oh' && items.length === 0 && !itemAt(words, at + 1)) break;
    if (first?.kind === 'fraction') break;
    items.push(item);
    at = item.to;
    const tail = pointTail(words, at);
    if (tail && joinedTo(words, at) && item.kind !== 'decimal') {
      items.push({ value: Number(`0.${tail.digits}`), from: at, to: tail.next, kind: 'decimal' });
      break;
    }
  }
  return items;
}

function plainAt(words: readonly Word[], i: number): Plain | undefined {
  const n = words[i]?.norm ?? '';
  const minus = (n === 'minus' || n === 'negative') && joinedTo(words, i + 1);
  const items = runAt(words, minus ? i + 1 : i);
  const last = items.at(-1);
  if (!last) return undefined;
  let readings = readingsOf(items);
  let to = last.to;
  const more = joinedTo(words, to) ? andFraction(words, to) : undefined;
  if (more && last.kind !== 'fraction') {
    const scale = joinedTo(words, more.next)
      ? words[more.next]?.norm === 'thousand'
        ? 1000
        : words[more.next]?.norm === 'hundred'
          ? 100
          : 1
      : 1;
    readings = readings.slice(0, 1).map((r) => ({ ...r, value: (r.value + more.value) * scale }));
    to = more.next + (scale > 1 ? 1 : 0);
  }
  if (minus) readings = readings.map((r) => ({ ...r, value: -r.value }));
  return { from: i, to, items, readings };
}

/** The number that begins at `i`, with range, unit and approximation; undefined where none begins. */
export function numberAt(words: readonly Word[], i: number): NumberSpan | undefined {
  const w = words[i];
  if (!w) return undefined;
  const money = w.norm === '$';
  let from = money ? i + 1 : i;
  if (w.norm === 'between') from = i + 1;
  let plain = plainAt(words, from);
  if (!plain) return anUnit(words, i);
  let unit = unitAt(words, plain.to, plain);
  let to = unit?.to ?? plain.to;
  const bare = plain.to;
  let upTo: Reading[] | undefined;
  let by: Reading[] | undefined;
  let of: number | undefined;
  const n = words[to]?.norm;
  const inPart = joinedTo(words, to);
  if (unit && inPart && n === 'and') {
    const more = andFraction(words, to);
    if (more) {
      plain = {
        ...plain,
        readings: plain.readings.slice(0, 1).map((r) => ({ ...r, value: r.value + more.value })),
      };
      to = more.next;
    }
  } else if (unit?.unit.units[0] === '[ft_i]' && inPart) {
    const inches = itemAt(words, to);
    const after = inches && unitWords.at(words, inches.to)?.values[0]?.units[0];
    if (
      inches &&
      inches.value < 12 &&
      (inches.kind === 'digit' || inches.kind === 'small') &&
      (after === '[in_i]' || after === undefined)
    ) {
      plain = {
        ...plain,
        readings: plain.readings.slice(0, 1).map((r) => ({ ...r, value: r.value + inches.value / 12 })),
      };
      to = after ? inches.to + (unitWords.at(words, inches.to)?.length ?? 0) : inches.to;
    }
  }
  if (inPart && (n === 'to' || n === 'or' || n === 'through' || (w.norm === 'between' && n === 'and'))) {
    const other = plainAt(words, to + 1);
    const low = plain.readings[0]?.value ?? 0;
    const high = other?.readings[0]?.value ?? 0;
    if (other && high > low && high <= Math.max(low * 4, low + 3) && itemAt(words, to + 1)) {
      upTo = other.readings;
      const said = unitAt(words, other.to, other);
      unit ??= said;
      to = said?.to ?? other.to;
    }
  } else if (inPart && n === 'by') {
    const other = plainAt(words, to + 1);
    if (other) {
      by = other.readings;
      const said = unitAt(words, other.to, other);
      unit ??= said;
      to = said?.to ?? other.to;
    }
  } else if (inPart && n === 'of' && !unit) {
    const at = words[to + 1]?.norm === 'the' ? to + 2 : to + 1;
    const whole = plainAt(words, at);
    const all = whole?.readings[0]?.value ?? 0;
    if (whole && Number.isInteger(all) && all >= (plain.readings[0]?.value ?? 0)) {
      of = all;
      to = whole.to;
    }
  }
  const isMoney = money || moneyAfter.has(words[to]?.norm ?? '');
  return {
    from: i,
    bare,
    to: isMoney && !money ? to + 1 : to,
    items: plain.items,
    readings: plain.readings,
    ...(unit ? { unit: unit.unit } : {}),
    ...(upTo ? { upTo } : {}),
    ...(by ? { by } : {}),
    ...(of === undefined ? {} : { of }),
    approx: isApprox(words, i, to) || (n === 'or' && upTo !== undefined),
    money: isMoney,
  };
}

/** "an inch and a half", "a couple of": numbers that begin with no number word. */
function anUnit(words: readonly Word[], i: number): NumberSpan | undefined {
  const n = words[i]?.norm;
  const none = { approx: isApprox(words, i, i + 2), money: false } as const;
  if (n === 'an' || n === 'a') {
    const unit = unitAfterAn.at(words, i + 1)?.values[0];
    const more = unit ? andFraction(words, i + 2) : undefined;
    if (unit && more) {
      const item: NumberItem = { value: 1, from: i, to: i + 1, kind: 'digit' };
      return {
        ...none,
        from: i,
        bare: more.next,
        to: more.next,
        items: [item],
        readings: [{ value: 1 + more.value, form: 'plain' }],
        unit: { units: [unit as Unit], times: 1 },
      };
    }
  }
  const pair = n === 'couple' || n === 'pair' || n === 'both';
  if (!pair) return undefined;
  const to = words[i + 1]?.norm === 'of' && n !== 'both' ? i + 2 : i + 1;
  const item: NumberItem = { value: 2, from: i, to: i + 1, kind: 'full' };
  const hit = unitWords.at(words, to);
  return {
    ...none,
    from: i,
    bare: i + 1,
    to: hit ? to + hit.length : i + 1,
    items: [item],
    readings: [{ value: 2, form: 'plain' }],
    ...(hit?.values[0] ? { unit: hit.values[0] } : {}),
    approx: none.approx || n === 'couple',
  };
}

/** Every number of the stream, in order, none over another. */
export function numbersIn(words: readonly Word[]): NumberSpan[] {
  const out: NumberSpan[] = [];
  for (let i = 0; i < words.length; ) {
    if (isNumbered(words, i)) {
      i++;
      continue;
    }
    const span = numberAt(words, i);
    if (span && span.to > i) {
      out.push(span);
      i = span.to;
    } else i++;
  }
  return out;
}
