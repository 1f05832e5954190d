// Why: an input nobody measured may be supposed, but only with its spread and with who says so.
import type { Unit } from '../units/unit.ts';
import type { Citation } from './standard.ts';

/** A value to go by when nothing better is known; always shown as supposed and always editable. */
export interface Supposed {
  readonly id: string;
  readonly what: string;
  readonly value: number;
  readonly unit: Unit;
  /** Half width, about 95 %. */
  readonly plusOrMinus: number;
  readonly citations: readonly [Citation, ...Citation[]];
}
