// Why: a tire is called as a row: place, date code, tread, pressure; often without a single unit.

import { itemAt, type NumberItem } from './number-item.ts';
import { digitString, readingsOf } from './number-reading.ts';
import type { NumberSpan } from './number-span.ts';
import { ordinals } from './number-words.ts';
import type { Word } from './word.ts';

/** One reading of the row. */
export interface TireReading {
  readonly aspect: 'tin' | 'tread_mid' | 'pressure_cold' | 'size';
  readonly value: number | string;
  readonly from: number;
  readonly to: number;
}

const isWeek = (n: number): boolean => n >= 1 && n <= 53;
const isYear = (n: number): boolean => n >= 5 && n <= 39;

/** "295 80 22.5" or "two forty-five seventy nineteen five" as a size; undefined where it is none. */
export function sizeOf(items: readonly NumberItem[]): string | undefined {
  if (items.length < 3) return undefined;
  const text = items
    .map((i) => i.written ?? (i.kind === 'decimal' ? String(i.value).replace(/^0/, '') : String(i.value)))
    .join('')
    .replaceAll('.', '');
  const m = /^([1-4]\d5)(\d\d)(1[2-9]|2[0-4])(5)?$/.exec(text);
  return m ? `${m[1]}/${m[2]}R${m[3]}${m[4] ? '.5' : ''}` : undefined;
}

/** A date code of two pieces or four digits as WWYY. */
function codeOf(items: readonly NumberItem[]): string | undefined {
  const [a, b, c] = items;
  if (items.length === 1 && a) {
    const text = a.written ?? '';
    const value =
      text.length === 3
        ? `0${text}`
        : text.length === 4
          ? text
          : a.kind === 'full' && a.value > 999 && a.value < 5400
            ? String(a.value)
            : '';
    return value !== '' && isWeek(Number(value.slice(0, 2))) && isYear(Number(value.slice(2)))
      ? value
      : undefined;
  }
  if (items.length === 2 && a && b) {
    if (
      (a.kind === 'small' || (a.written !== undefined && a.value > 9)) &&
      isWeek(a.value) &&
      b.kind === 'small' &&
      isYear(b.value)
    )
      return `${String(a.value).padStart(2, '0')}${String(b.value).padStart(2, '0')}`;
    return undefined;
  }
  if (items.length === 3 && a?.kind === 'oh' && b?.kind === 'digit' && c?.kind === 'small' && isYear(c.value))
    return `0${b.value}${c.value}`;
  if (
    items.length === 3 &&
    c?.kind === 'digit' &&
    b?.kind === 'oh' &&
    a &&
    isWeek(a.value) &&
    a.kind === 'small'
  )
    return `${a.value}0${c.value}`;
  const digits = items.length === 4 ? digitString(items) : undefined;
  return digits?.length === 4 && isWeek(Number(digits.slice(0, 2))) && isYear(Number(digits.slice(2)))
    ? digits
    : undefined;
}

/** Takes a run of pieces apart into the readings of a tire, in the order people say them. */
export function readTire(span: NumberSpan, asked: 'date' | 'tread' | 'pressure' | undefined): TireReading[] {
  const out: TireReading[] = [];
  let wants = asked;
  const unit = span.unit?.units[0];
  let items = [...span.items];
  const end = (list: readonly NumberItem[]): number => list.at(-1)?.to ?? span.bare;
  const size = sizeOf(items);
  if (size) return [{ aspect: 'size', value: size, from: span.from, to: span.bare }];
  if (unit && unit !== '[in_i]/32' && unit !== '[psi]' && unit !== '[lb_av]') return out;
  for (const length of [4, 3, 2, 1]) {
    if (length > items.length || (unit && length === items.length)) continue;
    const head = items.slice(0, length);
    const code = codeOf(head);
    if (!code || (length === 1 && wants !== 'date' && head[0]?.written === undefined)) continue;
    if (length === 2 && wants !== 'date' && wants !== undefined && items.length === 2) continue;
    out.push({ aspect: 'tin', value: code, from: head[0]?.from ?? span.from, to: end(head) });
    items = items.slice(length);
    wants = undefined;
    break;
  }
  if (items.length === 0) return out;
  const from = items[0]?.from ?? span.from;
  const readings = items.length === span.items.length ? span.readings : readingsOf(items);
  const within = (low: number, high: number): number | undefined =>
    readings.find((r) => r.value >= low && r.value <= high)?.value;
  const tread = within(0.5, 26);
  const pressure = within(25, 135);
  if (unit === '[in_i]/32') {
    if (tread !== undefined) out.push({ aspect: 'tread_mid', value: tread, from, to: span.to });
  } else if (unit !== undefined || wants === 'pressure') {
    if (pressure !== undefined) out.push({ aspect: 'pressure_cold', value: pressure, from, to: span.to });
  } else if (wants === 'tread') {
    if (tread !== undefined) out.push({ aspect: 'tread_mid', value: tread, from, to: span.to });
  } else if (wants !== 'date') {
    if (pressure !== undefined && (tread === undefined || pressure >= 40))
      out.push({ aspect: 'pressure_cold', value: pressure, from, to: span.to });
    else if (tread !== undefined && Number.isInteger(tread))
      out.push({ aspect: 'tread_mid', value: tread, from, to: span.to });
  }
  return out;
}

/** "thirty-first week of 2022", "week twenty-three of nineteen", "thirty-one of twenty-two" as a date code. */
export function weekAt(words: readonly Word[], span: NumberSpan): TireReading | undefined {
  const head = span.items[0];
  if (!head) return undefined;
  let at = head.to;
  let week = head.value;
  const ordinal = ordinals[words[at]?.norm ?? ''];
  if (ordinal !== undefined && ordinal < 10 && words[at - 1]?.stop === 0) {
    week += ordinal;
    at++;
  }
  const before = words[span.from - 1]?.norm;
  let named = before === 'week';
  if (words[at]?.norm === 'week') {
    named = true;
    at++;
  }
  if (words[at]?.norm !== 'of' || words[at - 1]?.stop !== 0) return undefined;
  const year = itemAt(words, at + 1);
  const more = year ? itemAt(words, year.to) : undefined;
  if (!year) return undefined;
  const whole =
    year.value === 20 && more?.kind === 'small' && words[year.to - 1]?.stop === 0
      ? 2000 + more.value
      : year.value;
  const short = whole >= 2000 && whole < 2040 ? whole - 2000 : whole;
  if (
    !Number.isInteger(week) ||
    !isWeek(week) ||
    !Number.isInteger(short) ||
    !isYear(short) ||
    (!named && week < 14)
  )
    return undefined;
  const to = whole === year.value ? year.to : (more?.to ?? year.to);
  return {
    aspect: 'tin',
    value: `${String(week).padStart(2, '0')}${String(short).padStart(2, '0')}`,
    from: span.from,
    to,
  };
}
