// Why: a reading is worded the same way in every document and on every screen: number, doubt, unit.
import type { Aspect } from '../catalogue/part.ts';
import type { Value } from '../said/entry.ts';
import { dollars, showMoney } from '../units/money.ts';
import { type Unit, unitFact } from '../units/unit.ts';
import { plainWeek } from './plain-week.ts';

/** Digits after the point that a plus-or-minus deserves: two significant digits of it, never more than four. */
const decimalsFor = (plusOrMinus: number): number =>
  plusOrMinus <= 0 ? 3 : Math.min(4, Math.max(0, 1 - Math.floor(Math.log10(plusOrMinus))));

/** "52,300", "12.4", "0.055": grouped by thousands; at most `given` digits after the point, fewer for large numbers, no idle zeros. */
export function plainNumber(n: number, given?: number, finestDigits = 3): string {
  const usual = Math.abs(n) >= 1000 ? 0 : Math.abs(n) >= 100 ? 1 : 3;
  const decimals = given ?? Math.min(usual, finestDigits);
  const text = Number(n.toFixed(decimals)).toFixed(decimals);
  const [whole = '0', rest = ''] = text.split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const trimmed = rest.replace(/0+$/, '');
  return (trimmed === '' ? grouped : `${grouped}.${trimmed}`).replace(/^-(0(\.0*)?)$/, '$1');
}

/** Digits after the point beyond which a number of that unit tells a reader nothing. */
const finest: Readonly<Partial<Record<Unit, number>>> = {
  a: 1,
  mo: 1,
  d: 0,
  h: 1,
  '[lb_av]': 0,
  '[mi_i]': 1,
  '[psi]': 1,
  '%': 1,
  '[degF]': 1,
  W: 0,
  '[HP]': 0,
  '[gal_us]': 1,
  'W.h': 0,
  '[mi_i]/h': 1,
};

/** A difference of temperatures is told in degrees; that it is one, its aspect says: "drop 20 °F". */
const symbolOf = (unit: Unit): string => unitFact(unit).symbol.replace(/ difference$/, '');

/** Puts the unit's symbol behind a number: "8/32 in", "19 %", "12.4 V". */
function withSymbol(number: string, unit: Unit): string {
  const symbol = symbolOf(unit);
  if (symbol === '') return number;
  return symbol.startsWith('/') ? `${number}${symbol}` : `${number} ${symbol}`;
}

/** "2" or "2 ± 0.5" of thirty-seconds carry the fraction at each number: "2/32 ± 0.5/32 in". */
const fraction = (unit: Unit): string => /^\/\d+/.exec(symbolOf(unit))?.[0] ?? '';

/** "12.4 ± 0.05 V", "5 to 6 gal", "2/32 in". The plus-or-minus is a half width in the same unit, shown with two significant digits. */
export function plainQuantity(value: number, unit: Unit, plusOrMinus?: number, upTo?: number): string {
  if (upTo !== undefined && upTo !== value) {
    const [from, to] = [value, upTo].map((n) => plainNumber(n, undefined, finest[unit]));
    if (from !== to) return withSymbol(`${from}${fraction(unit)} to ${to}`, unit);
  }
  if (plusOrMinus === undefined || plusOrMinus === 0)
    return withSymbol(plainNumber(value, undefined, finest[unit]), unit);
  const doubt = Number(plusOrMinus.toPrecision(2));
  const decimals = Math.min(decimalsFor(doubt), finest[unit] ?? 4);
  if (Number(doubt.toFixed(decimals)) === 0) return withSymbol(plainNumber(value, decimals), unit);
  return withSymbol(
    `${plainNumber(value, decimals)}${fraction(unit)} ± ${plainNumber(doubt, decimals)}`,
    unit,
  );
}

/** A length in feet as feet and whole inches: 12.42 -> "12 ft 5 in". */
export function feetAndInches(feet: number): string {
  const inches = Math.round(feet * 12);
  return inches % 12 === 0 ? `${inches / 12} ft` : `${Math.floor(inches / 12)} ft ${inches % 12} in`;
}

/** A value as words, told by what kind of answer the aspect takes. Never empty; an unknown says why. */
export function plainValue(value: Value, aspect?: Pick<Aspect, 'kind' | 'id'>): string {
  switch (value.is) {
    case 'quantity':
      if (aspect?.kind === 'money') return showMoney(dollars(value.value));
      if (aspect?.kind === 'year') return String(value.value);
      return plainQuantity(value.value, value.unit, value.plusOrMinus, value.upTo);
    case 'text':
      return aspect?.kind === 'date-code' ? (plainWeek(value.text) ?? value.text) : value.text;
    case 'count':
      return value.of === undefined ? String(value.count) : `${value.count} of ${value.of}`;
    case 'state':
      if (aspect?.id === 'operates' && value.state === 'yes') return 'works';
      if (aspect?.id === 'operates' && (value.state === 'no' || value.state === 'fails'))
        return 'does not work';
      return value.state;
    case 'unknown':
      return `unknown: ${value.why}`;
  }
}
