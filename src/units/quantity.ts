// Why: a reading is a number, a unit and a doubt; they travel together or not at all.
import { type Unit, unitFact } from './unit.ts';

/** A number with its UCUM unit and, where known, its plus-or-minus in the same unit (half width, about 95 %). */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
  readonly plusOrMinus?: number;
}

/** Makes a quantity. Throws on a number that is not finite: that is a programmer's mistake, outside input is checked at the door. */
export function quantity(value: number, unit: Unit, plusOrMinus?: number): Quantity {
  if (!Number.isFinite(value)) throw new RangeError(`quantity: ${value} ${unit} is not a number`);
  return plusOrMinus === undefined ? { value, unit } : { value, unit, plusOrMinus: Math.abs(plusOrMinus) };
}

/** True when both units measure the same dimension. */
export const isSameDimension = (a: Unit, b: Unit): boolean => unitFact(a).dimension === unitFact(b).dimension;

/**
 * The number in another unit of the same dimension. Throws when the dimensions differ.
 * @example convert(1, '[ft_i]', '[in_i]') // 12
 */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from === to) return value;
  const a = unitFact(from);
  const b = unitFact(to);
  if (a.dimension !== b.dimension)
    throw new TypeError(`convert: ${from} is ${a.dimension}, ${to} is ${b.dimension}`);
  return (value * a.factor + (a.offset ?? 0) - (b.offset ?? 0)) / b.factor;
}

/** The quantity in another unit; the plus-or-minus is scaled, never shifted. */
export function inUnit(q: Quantity, unit: Unit): Quantity {
  const value = convert(q.value, q.unit, unit);
  if (q.plusOrMinus === undefined) return { value, unit };
  return { value, unit, plusOrMinus: (q.plusOrMinus * unitFact(q.unit).factor) / unitFact(unit).factor };
}

/** The least and the most the quantity may be. */
export const rangeOf = (q: Quantity): readonly [low: number, high: number] => [
  q.value - (q.plusOrMinus ?? 0),
  q.value + (q.plusOrMinus ?? 0),
];
