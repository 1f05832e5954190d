// Why: a date is spoken in many ways: "oh one of nineteen", "March of twenty-one", "twenty twenty-four", "'15"; here the words become one text.
import { itemAt } from './number-item.ts';
import type { Word } from './word.ts';
import { wordTable } from './word-table.ts';

/** A date as said. `text` is "MM/YY", "MM/YYYY" or "YYYY", the year as it was said. */
export interface SpokenDate {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  /** How surely the words are a date and no other number: a bare "fifteen" needs "dated" before it. */
  readonly form: 'month' | 'year' | 'short';
}

const months: Readonly<Record<string, number>> = wordTable({
  january: 1,
  jan: 1,
  february: 2,
  feb: 2,
  march: 3,
  mar: 3,
  april: 4,
  apr: 4,
  may: 5,
  june: 6,
  jun: 6,
  july: 7,
  jul: 7,
  august: 8,
  aug: 8,
  september: 9,
  sept: 9,
  sep: 9,
  october: 10,
  oct: 10,
  november: 11,
  nov: 11,
  december: 12,
  dec: 12,
});
/** The year in as many digits as it was said with. */
const asSaid = (y: { readonly year: number; readonly short: boolean }): string =>
  y.short ? two(y.year % 100) : String(y.year);
const two = (n: number): string => String(n).padStart(2, '0');
const joined = (words: readonly Word[], i: number): boolean => words[i - 1]?.stop === 0;

/** A year at word `i`: "2015", "twenty fifteen", "two thousand nine", "twenty oh nine"; with `short` also "fifteen", "oh nine". */
function yearAt(words: readonly Word[], i: number): { year: number; to: number; short: boolean } | undefined {
  const a = itemAt(words, i);
  if (!a || a.kind === 'fraction' || a.kind === 'decimal') return undefined;
  const b = joined(words, a.to) ? itemAt(words, a.to) : undefined;
  const c = b && joined(words, b.to) ? itemAt(words, b.to) : undefined;
  const ok = (year: number, to: number): { year: number; to: number; short: boolean } | undefined =>
    Number.isInteger(year) && year >= 1960 && year <= 2045 ? { year, to, short: false } : undefined;
  if (a.written?.length === 4 || (a.kind === 'full' && a.value > 1000)) return ok(a.value, a.to);
  if (b && (a.value === 20 || a.value === 19) && a.kind === 'small') {
    if (b.kind === 'small') return ok(a.value * 100 + b.value, b.to);
    if (b.kind === 'oh' && c?.kind === 'digit') return ok(a.value * 100 + c.value, c.to);
  }
  if (a.kind === 'oh' && b?.kind === 'digit') return { year: 2000 + b.value, to: b.to, short: true };
  if (a.kind === 'small' && a.value <= 45 && !b) return { year: 2000 + a.value, to: a.to, short: true };
  if (a.kind === 'small' && a.value >= 70 && a.value <= 99 && !b)
    return { year: 1900 + a.value, to: a.to, short: true };
  return a.kind === 'digit' && a.written?.length === 2 && !b
    ? { year: 2000 + a.value, to: a.to, short: true }
    : undefined;
}

/** The date that the number at word `i` is or belongs to; a month may stand before it. */
export function spokenDateAt(words: readonly Word[], i: number): SpokenDate | undefined {
  const norm = (k: number): string => words[k]?.norm ?? '';
  // "March of twenty-one", "March twentieth, 2021"
  for (const at of [i - 1, i - 2, i - 3]) {
    const month = months[norm(at)];
    if (month === undefined) continue;
    if (
      (norm(at) === 'may' || norm(at) === 'march' || norm(at) === 'mar') &&
      !words[at]?.capital &&
      norm(at + 1) !== 'of'
    )
      continue;
    const between = words
      .slice(at + 1, i)
      .every((w) => /^(?:of|in|the|\d+(?:st|nd|rd|th)|first|\w+th|\w+st)$/.test(w.norm));
    const year = between ? yearAt(words, i) : undefined;
    return year ? { text: `${two(month)}/${asSaid(year)}`, from: at, to: year.to, form: 'month' } : undefined;
  }
  const written = /^(\d{1,2})\/(\d{2}|\d{4})$/.exec(norm(i));
  if (
    written &&
    Number(written[1]) <= 12 &&
    Number(written[1]) > 0 &&
    Number((written[2] ?? '').slice(-2)) >= 5
  )
    return {
      text: `${two(Number(written[1]))}/${written[2] ?? ''}`,
      from: i,
      to: i + 1,
      form: 'month',
    };
  // "oh one of nineteen", "six slash eighteen", "oh eight twenty-two"
  const a = itemAt(words, i);
  if (!a) return undefined;
  const oh = a.kind === 'oh' ? itemAt(words, a.to) : undefined;
  const month = oh ? oh.value : a.value;
  const end = oh ? oh.to : a.to;
  if (
    (!oh || (oh.kind === 'digit' && joined(words, a.to))) &&
    Number.isInteger(month) &&
    month >= 1 &&
    month <= 12 &&
    joined(words, end)
  ) {
    const links = /^(?:of|slash|stroke|dash)$/.test(norm(end)) && joined(words, end + 1);
    const year = links
      ? yearAt(words, end + 1)
      : oh || (a.written?.startsWith('0') ?? false)
        ? yearAt(words, end)
        : undefined;
    if (year && year.year >= 2000 && (links || !oh || year.year % 100 >= 10))
      return { text: `${two(month)}/${asSaid(year)}`, from: i, to: year.to, form: 'month' };
  }
  const year = yearAt(words, i);
  return year
    ? { text: String(year.year), from: i, to: year.to, form: year.short ? 'short' : 'year' }
    : undefined;
}
