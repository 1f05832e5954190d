// Why: on screen everything that must be settled or watched has its pin, also what could not be told and is stopped for that.
import type { Finding } from '../../../judged/finding.ts';
import type { Facts } from '../../../known/facts.ts';
import { axlesOf } from '../../../published/drawing/axles.ts';
import { type Drawing, drawingOf, type View } from '../../../published/drawing/drawing.ts';
import { pinsOf } from '../../../published/drawing/pins.ts';
import { sizesOf } from '../../../published/drawing/sizes.ts';
import { byWorst } from '../../../published/fault.ts';

export type { View };
export const views: readonly View[] = ['road side', 'curb side'];

/** One side of the unit, with a pin for every finding that must be settled, and for those to watch when they are wanted. */
export function drawingWithPins(
  facts: Facts,
  findings: readonly Finding[],
  view: View,
  withWatch: boolean,
): Drawing {
  const sizes = sizesOf(facts);
  const long = sizes.length.feet;
  const shown = withWatch ? ['stop', 'repair', 'watch'] : ['stop', 'repair'];
  const marked = findings.filter((f) => shown.includes(f.verdict)).toSorted(byWorst);
  const pins = pinsOf(marked, view, long, sizes.height.feet, axlesOf(sizes));
  return {
    ...drawingOf(facts, [], view),
    pins: view === 'curb side' ? pins.map((p) => ({ ...p, x: long - p.x })) : pins,
  };
}
