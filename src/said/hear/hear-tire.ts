// Why: a tire is called as a row: place, date code, tread, pressure; often without a single unit.

import { itemAt, type NumberItem } from './number-item.ts';
import { digitString, readingsOf } from './number-reading.ts';
import type { NumberSpan } from './number-span.ts';
import { ordinals } from './number-words.ts';
import type { Word } from './word.ts';

/** One reading of the row. */
export interface TireReading {
  readonly aspect: 'tin' | 'tread_mid' | 'pressure_cold';
  readonly value: number | string;
  readonly from: number;
  readonly to: number;
}

const isWeek = (n: number): boolean => n >= 1 && n <= 53;
const isYear = (n: number): boolean => n >= 5 && n <= 29;

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

/** What a tire has been asked for: by a word before, or by how the row goes. */
export type Wanted = 'date' | 'tread' | 'pressure' | undefined;

/** What the readings before at the same corner leave open, and what the row is a row of. */
export interface RowSoFar {
  readonly wants: Wanted;
  /** Only likely: the readings before were all of this kind. */
  readonly likely?: Wanted;
  /** Already read at this corner. */
  readonly had: ReadonlySet<TireReading['aspect']>;
}

interface Cut {
  readonly score: number;
  readonly readings: readonly TireReading[];
}
const none: Cut = { score: 0, readings: [] };
const aspectOf = { date: 'tin', tread: 'tread_mid', pressure: 'pressure_cold' } as const;

/** Takes a run of pieces apart into the readings of a tire: of all cuts the one whose pieces fit best. */
export function readTire(span: NumberSpan, row: RowSoFar): TireReading[] {
  const unit = span.unit?.units[0];
  if (unit && unit !== '[in_i]/32' && unit !== '[psi]' && unit !== '[lb_av]') return [];
  const items = span.items.slice(0, 9);
  const dateless: RowSoFar = { had: row.had, wants: undefined };
  const bonus = (aspect: TireReading['aspect']): number =>
    (row.wants && aspectOf[row.wants] === aspect ? 1.6 : 0) +
    (row.likely && aspectOf[row.likely] === aspect ? 0.8 : 0) -
    (row.had.has(aspect) ? 0.5 : 0);
  const best = (at: number, used: ReadonlySet<string>): Cut | undefined => {
    if (at >= items.length) return none;
    let top: Cut | undefined;
    for (let to = Math.min(items.length, at + 4); to > at; to--) {
      const part = items.slice(at, to);
      const after = items[to];
      // "one twenty" is no tread of one and twenty pounds
      if (part.length === 1 && part[0]?.kind === 'digit' && part[0].value === 1 && after) continue;
      const last = to === items.length;
      for (const r of asReadings(
        part,
        last ? unit : undefined,
        last,
        row.wants === 'date' && used.has('tin') ? dateless : row,
        last ? span : undefined,
      )) {
        // two codes in a row are two tries at one
        if (used.has(r.aspect) && r.aspect !== 'tin') continue;
        const rest = best(to, new Set([...used, r.aspect]));
        if (!rest) continue;
        const early = r.aspect === 'tin' || (r.aspect === 'tread_mid' && !used.has('pressure_cold'));
        const score = r.score + bonus(r.aspect) + (early ? 0.1 : 0) + rest.score;
        if (!top || score > top.score)
          top = {
            score,
            readings: [
              {
                aspect: r.aspect,
                value: r.value,
                from: part[0]?.from ?? span.from,
                to: part.at(-1)?.to ?? span.bare,
              },
              ...rest.readings.filter((x) => x.aspect !== r.aspect),
            ],
          };
      }
    }
    return top;
  };
  return [...(best(0, new Set())?.readings ?? [])];
}

/** What a piece of the run may be, with how well it fits. */
function asReadings(
  part: readonly NumberItem[],
  unit: string | undefined,
  last: boolean,
  row: RowSoFar,
  span: NumberSpan | undefined,
): { readonly aspect: TireReading['aspect']; readonly value: number | string; readonly score: number }[] {
  const out: { aspect: TireReading['aspect']; value: number | string; score: number }[] = [];
  const code = unit ? undefined : codeOf(part);
  const [head] = part;
  if (code && (part.length > 1 || head?.written !== undefined || row.wants === 'date'))
    out.push({
      aspect: 'tin',
      value: code,
      score: part.length === 1 ? 3 : part.length === 4 && part.every((x) => x.kind === 'digit') ? 4.6 : 2.4,
    });
  if (row.wants === 'date' && part.length > 0 && out.length > 0) return out;
  const whole = last && span && part.length === span.items.length ? span.readings : readingsOf(part);
  const tread = whole.find(
    (r) => r.value >= 1 && r.value <= 26 && (r.form === 'plain' || part.some((i) => i.kind === 'decimal')),
  )?.value;
  const low = row.wants === 'pressure' || row.likely === 'pressure' || unit !== undefined ? 5 : 25;
  const pressure = whole.find((r) => r.value >= low && r.value <= 135 && r.form !== 'decimal')?.value;
  const isTread = unit === '[in_i]/32';
  if (
    tread !== undefined &&
    (isTread || (unit === undefined && row.wants !== 'pressure' && row.wants !== 'date'))
  )
    if (isTread || Number.isInteger(tread) || tread % 0.5 === 0 || row.wants === 'tread')
      out.push({
        aspect: 'tread_mid',
        value: tread,
        score: isTread ? 3 : tread <= 16 ? 1.5 : tread <= 22 ? 1 : 0.8,
      });
  if (
    pressure !== undefined &&
    !isTread &&
    (unit !== undefined || (row.wants !== 'tread' && row.wants !== 'date')) &&
    Number.isInteger(pressure * 2)
  )
    out.push({
      aspect: 'pressure_cold',
      value: pressure,
      score: unit ? 3 : pressure >= 40 ? 1.2 : pressure >= 25 ? 0.9 : 0.6,
    });
  return out;
}

/** "thirty-first week of 2022", "week twenty-three of nineteen", "thirty-one of twenty-two" as a date code. */
export function weekAt(
  words: readonly Word[],
  span: NumberSpan,
): (TireReading & { readonly named: boolean }) | undefined {
  const head = span.items[0];
  if (!head) return undefined;
  // "the fourteenth week of twenty-two"
  const nth = ordinals[words[span.from - 3]?.norm ?? ''];
  if (
    nth !== undefined &&
    words[span.from - 2]?.norm === 'week' &&
    /^(?:of|in|from)$/.test(words[span.from - 1]?.norm ?? '')
  ) {
    const year = span.readings.find(
      (r) => Number.isInteger(r.value) && (isYear(r.value) || isYear(r.value - 2000)),
    );
    if (year)
      return {
        aspect: 'tin',
        value: `${String(nth).padStart(2, '0')}${String(year.value % 100).padStart(2, '0')}`,
        from: span.from,
        to: span.bare,
        named: true,
      };
  }
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
  const joins = words[at]?.norm ?? '';
  if (words[at - 1]?.stop !== 0 || !(joins === 'of' || (named && /^(?:from|in)$/.test(joins))))
    return undefined;
  const year = itemAt(words, at + 1);
  const more = year ? itemAt(words, year.to) : undefined;
  if (!year) return undefined;
  const oh = year.kind === 'oh' && more?.kind === 'digit' && words[year.to - 1]?.stop === 0;
  const whole = oh
    ? (more?.value ?? 0)
    : year.value === 20 && more?.kind === 'small' && words[year.to - 1]?.stop === 0
      ? 2000 + more.value
      : year.value;
  const short = whole >= 2000 && whole < 2040 ? whole - 2000 : whole;
  if (
    !Number.isInteger(week) ||
    !isWeek(week) ||
    !Number.isInteger(short) ||
    !isYear(short) ||
    (!named && week < 14 && short < 13)
  )
    return undefined;
  const to = whole === year.value && !oh ? year.to : (more?.to ?? year.to);
  return {
    aspect: 'tin',
    value: `${String(week).padStart(2, '0')}${String(short).padStart(2, '0')}`,
    from: span.from,
    to,
    named,
  };
}
