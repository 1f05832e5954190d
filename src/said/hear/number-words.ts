// Why: the words of English numbers, as people say them and recognisers write them.
import { wordTable } from './word-table.ts';

export const ones: Readonly<Record<string, number>> = wordTable({
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
});
export const teens: Readonly<Record<string, number>> = wordTable({
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
});
export const tens: Readonly<Record<string, number>> = wordTable({
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
});
export const scales: Readonly<Record<string, number>> = wordTable({
  hundred: 100,
  thousand: 1000,
  thousands: 1000,
  grand: 1000,
  million: 1_000_000,
});
/** Parts of one; the key is what follows a count: "three quarters", "five eighths". */
export const fractions: Readonly<Record<string, number>> = wordTable({
  half: 1 / 2,
  halves: 1 / 2,
  third: 1 / 3,
  thirds: 1 / 3,
  quarter: 1 / 4,
  quarters: 1 / 4,
  fourth: 1 / 4,
  fourths: 1 / 4,
  fifths: 1 / 5,
  eighth: 1 / 8,
  eighths: 1 / 8,
  tenths: 1 / 10,
  sixteenth: 1 / 16,
  sixteenths: 1 / 16,
});
export const ordinals: Readonly<Record<string, number>> = wordTable({
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
  tenth: 10,
  eleventh: 11,
  twelfth: 12,
  thirteenth: 13,
  fourteenth: 14,
  fifteenth: 15,
  sixteenth: 16,
  seventeenth: 17,
  eighteenth: 18,
  nineteenth: 19,
  twentieth: 20,
  thirtieth: 30,
  fortieth: 40,
  fiftieth: 50,
});
const marks: Readonly<Record<string, number>> = wordTable({ '½': 0.5, '¼': 0.25, '¾': 0.75 });

/** The value of a number written in digits: "41212", "12.7", "3/4", "½". */
export function digitsValue(norm: string): number | undefined {
  if (norm in marks) return marks[norm];
  const m = /^(-?\d+(?:\.\d+)?)(?:\/(\d+))?$/.exec(norm);
  if (!m) return /^\.\d+$/.test(norm) ? Number(norm) : undefined;
  const under = m[2] === undefined ? 1 : Number(m[2]);
  return under === 0 ? undefined : Number(m[1]) / under;
}
