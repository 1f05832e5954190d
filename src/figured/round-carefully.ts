// Why: a figure is shown to the careful side: room and endurance down, what is needed up.
import type { Quantity } from '../units/quantity.ts';

/** Floating point leaves 2,520 as 2,519.9999999; that is not ten pounds less. */
const hair = 1e-9;
const scaled = (value: number, step: number): number => value / step;

/** Down to a multiple of a step. */
export const roundDown =
  (step: number) =>
  (q: Quantity): Quantity => ({ ...q, value: tidy(Math.floor(scaled(q.value, step) + hair), step) });

/** Up to a multiple of a step. */
export const roundUp =
  (step: number) =>
  (q: Quantity): Quantity => ({ ...q, value: tidy(Math.ceil(scaled(q.value, step) - hair), step) });

/** To the nearest multiple of a step, where neither side is the careful one. */
export const roundNear =
  (step: number) =>
  (q: Quantity): Quantity => ({ ...q, value: tidy(Math.round(scaled(q.value, step)), step) });

/** Steps below one are divided by their reciprocal, so that 0.1 steps come out as written. */
const tidy = (steps: number, step: number): number =>
  (step < 1 ? steps / Math.round(1 / step) : steps * step) + 0;
