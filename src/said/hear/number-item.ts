// Why: the smallest pieces of a spoken number; what they add up to ("twelve six": 126, 12.6 or 12,600) is for the context to say.
import { digitsValue, fractions, ones, scales, teens, tens } from './number-words.ts';
import type { Word } from './word.ts';

/** One piece of a number. `written` keeps digits as they came; `oh` is a spoken nought that only joins. */
export interface NumberItem {
  readonly value: number;
  readonly from: number;
  readonly to: number;
  readonly kind: 'digit' | 'small' | 'full' | 'oh' | 'fraction' | 'decimal';
  readonly written?: string;
}

const pronounBefore = new Set(
  (
    'this that which each other any every another no only inner outer front rear left right middle top bottom new old big little good bad ' +
    'nice nicer older newer bigger smaller blue white red gray grey green silver tan black brown yellow which last first third second same inside outside the my your his her our their driver passenger main back wrong right next ' +
    'someone no-one'
  ).split(' '),
);
const pronounAfter = new Set(
  "'s that which who more side thing day time way i we you they he for was had has is isn't isn't works work needs looks goes does doesn't won't will don't wasn't came comes got wants manages can can't cannot feels sounds".split(
    ' ',
  ),
);

const isDigitWord = (n: string): boolean =>
  Object.hasOwn(ones, n) || Object.hasOwn(teens, n) || n === 'point';

/** "One and a half", "one seven": the one begins a number. */
const oneAndMore = (words: readonly Word[], i: number): boolean =>
  words[i + 1]?.norm === 'and'
    ? words[i + 1]?.stop === 0 && andFraction(words, i + 1) !== undefined
    : Object.hasOwn(ones, words[i + 1]?.norm ?? '');

/** True when "one" at `i` stands for a thing, not for a number. */
export function isPronounOne(words: readonly Word[], i: number): boolean {
  const before = words[i - 1];
  const next = words[i + 1]?.norm ?? '';
  // "left front one forty" is a hundred and forty
  if (
    before &&
    /^(?:front|rear|left|right|driver|passenger)$/.test(before.norm) &&
    words[i]?.stop === 0 &&
    (((Object.hasOwn(tens, next) || Object.hasOwn(teens, next)) &&
      // "and the rear one twelve eight"
      !(
        /^(?:the|that|this)$/.test(words[i - 2]?.norm ?? '') &&
        isDigitWord(words[i + 2]?.norm ?? '') &&
        words[i + 1]?.stop === 0 &&
        !Object.hasOwn(tens, next)
      )) ||
      // "steer left one and five eighths", "drive right one seven"
      (!/^(?:the|that|this|my|your|his)$/.test(words[i - 2]?.norm ?? '') && oneAndMore(words, i)))
  )
    return false;
  if (before && before.stop === 0 && pronounBefore.has(before.norm)) return true;
  const after = words[i + 1];
  return after !== undefined && words[i]?.stop === 0 && pronounAfter.has(after.norm);
}

const isJoined = (words: readonly Word[], i: number): boolean => words[i - 1]?.stop === 0;

/** 0 to 99 in words at `i`. */
function below100(words: readonly Word[], i: number): { value: number; next: number } | undefined {
  const n = words[i]?.norm ?? '';
  if (Object.hasOwn(teens, n)) return { value: teens[n] ?? 0, next: i + 1 };
  if (Object.hasOwn(tens, n)) {
    const after = words[i + 1]?.norm ?? '';
    const unit = Object.hasOwn(ones, after) && words[i]?.stop === 0 ? (ones[after] ?? 0) : 0;
    return unit > 0 ? { value: (tens[n] ?? 0) + unit, next: i + 2 } : { value: tens[n] ?? 0, next: i + 1 };
  }
  return Object.hasOwn(ones, n) ? { value: ones[n] ?? 0, next: i + 1 } : undefined;
}

/** A head that a scale may follow: words below 100, digits, or "a". */
function headAt(words: readonly Word[], i: number): { value: number; next: number } | undefined {
  const n = words[i]?.norm ?? '';
  if (n === 'a' && Object.hasOwn(scales, words[i + 1]?.norm ?? '')) return { value: 1, next: i + 1 };
  // "hundred and eight": the "a" is often left out
  if (
    (n === 'hundred' || n === 'thousand') &&
    !(
      isJoined(words, i) &&
      !(
        words[i - 1]?.norm === 'of' && !/^(?:couple|few|dozens|tens|lot|lots)$/.test(words[i - 2]?.norm ?? '')
      ) &&
      /^(?:couple|few|several|of|many|by|per|one|half|quarter|quarters|halves|point|hundred)$/.test(
        words[i - 1]?.norm ?? '',
      )
    )
  )
    return { value: 1, next: i };
  const digits = digitsValue(n);
  return digits !== undefined ? { value: digits, next: i + 1 } : below100(words, i);
}

const scaleAt = (words: readonly Word[], i: number, name: string): boolean =>
  isJoined(words, i) &&
  (words[i]?.norm === name || (name === 'thousand' && /^(?:thousands|grand)$/.test(words[i]?.norm ?? '')));

/** Past "and" at `i` where a number below 100 follows. */
const pastAnd = (words: readonly Word[], i: number): number =>
  words[i]?.norm === 'and' && isJoined(words, i) && isJoined(words, i + 1) && below100(words, i + 1)
    ? i + 1
    : i;

/** "X hundred [and] Y", or a number below 1,000 (or digits) alone. */
function hundreds(
  words: readonly Word[],
  i: number,
): { value: number; next: number; scaled: boolean } | undefined {
  const head = headAt(words, i);
  if (!head) return undefined;
  if (!(head.next === i && words[i]?.norm === 'hundred') && !scaleAt(words, head.next, 'hundred'))
    return { ...head, scaled: false };
  const value = head.value * 100;
  const at = pastAnd(words, head.next + 1);
  const rest = isJoined(words, at) ? below100(words, at) : undefined;
  if (!rest || rest.value === 0 || scaleAt(words, rest.next, 'hundred'))
    return { value, next: head.next + 1, scaled: true };
  return { value: value + rest.value, next: rest.next, scaled: true };
}

/** Numbers with a scale word: "three hundred and ten thousand and ninety-seven". Undefined without one. */
function scaled(words: readonly Word[], i: number): { value: number; next: number } | undefined {
  let total = 0;
  let at = i;
  let found = false;
  for (const name of ['million', 'thousand', ''] as const) {
    const start = found ? pastAnd(words, at) : at;
    if (found && !isJoined(words, start)) break;
    if (found && words[start]?.norm === 'a') break;
    const group = hundreds(words, start);
    if (!group) break;
    if (name === '') {
      if (!found && !group.scaled) return undefined;
      if (found && group.value >= 1000) break;
      // "forty-one thousand two twelve"
      const short =
        found && !group.scaled && group.value > 0 && group.value < 10 && isJoined(words, group.next)
          ? below100(words, group.next)
          : undefined;
      if (short && short.value >= 10)
        return { value: total + group.value * 100 + short.value, next: short.next };
      return { value: total + group.value, next: group.next };
    }
    if (!scaleAt(words, group.next, name)) continue;
    total += group.value * (name === 'million' ? 1_000_000 : 1000);
    at = group.next + 1;
    found = true;
  }
  return found ? { value: total, next: at } : undefined;
}

/** The digits after "point" at `i`, as a decimal tail: "point oh five" -> ".05". */
export function pointTail(words: readonly Word[], i: number): { digits: string; next: number } | undefined {
  if (words[i]?.norm !== 'point') return undefined;
  let digits = '';
  let at = i + 1;
  while (at < words.length && isJoined(words, at)) {
    const n = words[at]?.norm ?? '';
    if (n === 'oh' || n === 'o') digits += '0';
    else if (Object.hasOwn(ones, n)) digits += String(ones[n]);
    else if (/^\d+$/.test(n)) digits += n;
    else {
      const small = digits === '' ? below100(words, at) : undefined;
      if (!small) break;
      digits += String(small.value);
      at = small.next;
      break;
    }
    at++;
  }
  return digits === '' ? undefined : { digits, next: at };
}

/** The piece of a number that begins at `i`. */
export function itemAt(words: readonly Word[], i: number): NumberItem | undefined {
  const n = words[i]?.norm ?? '';
  if (n === 'point' || n === 'zero' || n === 'oh' || n === 'o') {
    const tail = n === 'point' ? pointTail(words, i) : undefined;
    if (tail) return { value: Number(`0.${tail.digits}`), from: i, to: tail.next, kind: 'decimal' };
    if (n === 'point') return undefined;
    return { value: 0, from: i, to: i + 1, kind: n === 'zero' ? 'digit' : 'oh' };
  }
  const big = scaled(words, i);
  if (big) return { value: big.value, from: i, to: big.next, kind: 'full' };
  const digits = digitsValue(n);
  if (digits !== undefined) {
    const kind =
      n.includes('/') || (n.length === 1 && !/\d/.test(n))
        ? 'fraction'
        : n.includes('.')
          ? 'decimal'
          : digits < 10 && n.length === 1
            ? 'digit'
            : digits < 100 && n.length < 3
              ? 'small'
              : 'full';
    return { value: digits, from: i, to: i + 1, kind, written: n };
  }
  if (Object.hasOwn(fractions, n) && /^(?:half|quarter)$/.test(n))
    return { value: fractions[n] ?? 0, from: i, to: i + 1, kind: 'fraction' };
  // "right front one oh five": a hundred and five, no pronoun
  const ohs = /^(?:oh|o|zero)$/.test(words[i + 1]?.norm ?? '') && isJoined(words, i + 1);
  if (n === 'one' && !ohs && isPronounOne(words, i)) return undefined;
  const small = below100(words, i);
  if (!small) return n === 'dozen' ? { value: 12, from: i, to: i + 1, kind: 'full' } : undefined;
  const under = fractions[words[small.next]?.norm ?? ''];
  const name = words[small.next]?.norm ?? '';
  if (
    under !== undefined &&
    isJoined(words, small.next) &&
    (small.value === 1 ? !name.endsWith('s') && name !== 'third' : name.endsWith('s') || name === 'halves')
  ) {
    return { value: small.value * under, from: i, to: small.next + 1, kind: 'fraction' };
  }
  return { value: small.value, from: i, to: small.next, kind: small.value < 10 ? 'digit' : 'small' };
}

/** "and a half", "and three quarters" at `i`. */
export function andFraction(words: readonly Word[], i: number): { value: number; next: number } | undefined {
  if (words[i]?.norm !== 'and') return undefined;
  const at = words[i + 1]?.norm === 'a' ? i + 2 : i + 1;
  const item = itemAt(words, at);
  return item?.kind === 'fraction' && item.value < 1 ? { value: item.value, next: item.to } : undefined;
}
