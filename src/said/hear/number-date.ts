// Why: dates are spoken as bare numbers: the year a thing was made, and the year by which it is to be replaced.
import type { Mention } from './mention.ts';
import { digitString } from './number-reading.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';

/** A year or month and year as said beside "date": "oh eight twenty-two" -> 08/22, "twenty-twenty" -> 2020. */
export function dateText(span: NumberSpan, month?: number): string | undefined {
  const short = span.readings[0]?.value ?? 0;
  if (month !== undefined) {
    const whole = span.readings.find(
      (r) => Number.isInteger(r.value) && r.value >= 1980 && r.value <= 2045,
    )?.value;
    const year = whole ?? (span.items.length === 1 && short >= 1 && short <= 45 ? short : undefined);
    if (year !== undefined) return `${String(month).padStart(2, '0')}/${String(year % 100).padStart(2, '0')}`;
  }
  const [a, b, c] = span.items;
  const joined = span.readings.find((r) => r.value >= 1960 && r.value <= 2045);
  if (joined && Number.isInteger(joined.value)) return String(joined.value);
  if (
    span.items.length === 3 &&
    a?.kind === 'oh' &&
    b?.kind === 'digit' &&
    c &&
    c.value >= 5 &&
    c.value <= 45
  )
    return `0${b.value}/${String(c.value).padStart(2, '0')}`;
  if (
    span.items.length === 2 &&
    a &&
    b &&
    a.value <= 12 &&
    a.value > 0 &&
    b.kind === 'small' &&
    b.value <= 45
  )
    return `${String(a.value).padStart(2, '0')}/${String(b.value).padStart(2, '0')}`;
  const text = digitString(span.items);
  return text && /^\d{4}$/.test(text) ? text : undefined;
}

const until = /^(?:by|until|till|through|thru|expires|expired|expire|expiration|to|'til|expiry)$/;
/** The year after "replace by", "good till", "expires in": twenty-seven is 2027. */
export function limitYear(talk: Talk, span: NumberSpan): string | undefined {
  const { words, sentenceOf } = talk.marks;
  const before = words
    .slice(Math.max(0, span.from - 5), span.from)
    .filter((_, k) => sentenceOf[Math.max(0, span.from - 5) + k] === sentenceOf[span.from])
    .map((w) => w.norm);
  if (
    !before.some((w) => until.test(w)) ||
    !before.some((w) => /^(?:replace|good|best|exp\w*|use|valid)$/.test(w))
  )
    return undefined;
  const year = span.readings.find(
    (r) => Number.isInteger(r.value) && r.value >= 1990 && r.value <= 2060,
  )?.value;
  const short = span.readings[0]?.value ?? 0;
  return year
    ? String(year)
    : span.items.length === 1 && short >= 10 && short <= 45
      ? String(2000 + short)
      : undefined;
}
const limitedParts = /_alarm$|^extinguisher$/;
/** The alarm or extinguisher that was named last before the number. */
export function nearestAlarm(talk: Talk, parts: readonly string[], span: NumberSpan): string | undefined {
  let named: Mention | undefined;
  for (let i = span.from; !named && i > span.from - 40 && i > 0; i--) named = talk.marks.mentionAt.to(i);
  return (
    named?.parts.find((p) => limitedParts.test(p)) ?? parts.slice(0, 4).find((p) => limitedParts.test(p))
  );
}

const months = 'january february march april may june july august september october november december'.split(
  ' ',
);
/** The month named right before the number: "March of twenty-one". */
export function monthBefore(talk: Talk, span: NumberSpan): number | undefined {
  const norm = (i: number): string => talk.marks.words[i]?.norm ?? '';
  const at = norm(span.from - 1) === 'of' ? span.from - 2 : span.from - 1;
  const k = months.indexOf(norm(at));
  return k >= 0 && (talk.marks.words[at]?.capital ?? false) ? k + 1 : undefined;
}
