// Why: "twelve six" may be 126, 12.6 or 12,600; all readings are kept until part, aspect and unit choose.
import type { NumberItem } from './number-item.ts';

/** How the pieces were put together, likeliest first. */
export type ReadingForm = 'plain' | 'joined' | 'decimal' | 'thousands';

/** One number that the words may mean. */
export interface Reading {
  readonly value: number;
  readonly form: ReadingForm;
}

const two = (n: number): string => String(n).padStart(2, '0');

/** "12" + "6" + "1" -> 12.61: the first piece whole, the rest decimals. */
function decimal(items: readonly NumberItem[]): number | undefined {
  const [head, ...rest] = items;
  if (!head || rest.length === 0 || head.kind === 'oh' || !Number.isInteger(head.value)) return undefined;
  if (rest.some((r) => r.kind === 'full' || r.kind === 'fraction' || r.kind === 'decimal')) return undefined;
  return Number(`${head.value}.${rest.map((r) => String(r.value)).join('')}`);
}

/** "one twenty" -> 120, "six oh four" -> 604, "two ten" -> 210, "four four one" -> 441, "eleven eighty" -> 1180. */
function joined(items: readonly NumberItem[]): number | undefined {
  if (items.some((i) => i.kind === 'full' || i.kind === 'fraction' || i.kind === 'decimal')) return undefined;
  if (items.every((i) => i.kind === 'digit' || i.kind === 'oh'))
    return items.length >= 3 ? Number(items.map((i) => i.value).join('')) : undefined;
  let text = '';
  let afterOh = false;
  for (const [k, item] of items.entries()) {
    if (item.kind === 'oh') {
      if (k === 0) return undefined;
      text += '0';
      afterOh = true;
    } else if (item.kind === 'digit') {
      if (k > 0 && !afterOh && k < items.length - 1 && items[k + 1]?.kind !== 'small') return undefined;
      if (k > 0 && !afterOh && k === items.length - 1) return undefined;
      text += String(item.value);
      afterOh = false;
    } else {
      text += two(item.value);
      afterOh = false;
    }
  }
  return text.length > 7 ? undefined : Number(text);
}

/** "thirteen five" -> 13,500; "fifty-two three hundred" -> 52,300; "twenty-eight six fifty-one" -> 28,651. */
function thousands(items: readonly NumberItem[]): number | undefined {
  const [a, b, c] = items;
  if (!a || !b || a.value < 1 || a.value > 999 || !Number.isInteger(a.value) || a.kind === 'oh')
    return undefined;
  if (!c) {
    if (b.kind === 'digit') return a.value * 1000 + b.value * 100;
    return b.kind === 'full' && b.value >= 100 && b.value < 1000 ? a.value * 1000 + b.value : undefined;
  }
  if (items.length > 3) return undefined;
  if (b.kind === 'digit' && c.kind === 'small') return a.value * 1000 + b.value * 100 + c.value;
  return undefined;
}

/** Every number that a run of pieces may mean, likeliest first. */
export function readingsOf(items: readonly NumberItem[]): Reading[] {
  const only = items[0];
  if (!only) return [];
  if (items.length === 1) return [{ value: only.value, form: 'plain' }];
  const last = items.at(-1) as NumberItem;
  if (last.kind === 'decimal' && last.value < 1 && last.written === undefined) {
    return readingsOf(items.slice(0, -1))
      .filter((r) => Number.isInteger(r.value))
      .map((r) => ({ ...r, value: Number(`${r.value}${String(last.value).slice(1)}`) }));
  }
  if (last.kind === 'fraction' && last.value < 1 && items.length === 2)
    return [{ value: only.value + last.value, form: 'plain' }];
  const out: Reading[] = [];
  const push = (value: number | undefined, form: ReadingForm): void => {
    if (value !== undefined && Number.isFinite(value) && !out.some((r) => r.value === value))
      out.push({ value, form });
  };
  push(joined(items), 'joined');
  push(decimal(items), 'decimal');
  if (items.length === 3) {
    const head = joined(items.slice(0, 2));
    if (head !== undefined && last.kind === 'digit') push(Number(`${head}.${last.value}`), 'decimal');
  }
  push(thousands(items), 'thousands');
  return out;
}

/** The pieces as one string of digits: "one one seven oh four two" -> "117042"; undefined where a piece is no digits. */
export function digitString(items: readonly NumberItem[]): string | undefined {
  if (
    items.some(
      (i) => (i.kind === 'full' && i.written === undefined) || i.kind === 'fraction' || i.kind === 'decimal',
    )
  )
    return undefined;
  return items.map((i) => i.written ?? String(i.value)).join('');
}
