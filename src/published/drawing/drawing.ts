// Why: the drawing of the unit is the index to all that was found: to scale, with how each size is known, and every fault pinned.
import type { Finding } from '../../judged/finding.ts';
import type { Facts } from '../../known/facts.ts';
import { byWorst, isFault } from '../fault.ts';
import { feetAndInches, plainNumber } from '../plain-value.ts';
import { axlesOf } from './axles.ts';
import { bodyOf } from './body.ts';
import { type Pin, pinsOf } from './pins.ts';
import { box, mirrored, type Shape } from './shape.ts';
import { isDoubtful, type Size, sizesOf } from './sizes.ts';

export type View = 'road side' | 'curb side';

/** A dimension line between two points in feet, with its label; dashed where the size is assumed, guessed or not settled. */
export interface DimensionLine {
  readonly what: 'length' | 'wheelbase' | 'height';
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  readonly label: string;
  readonly assumed: boolean;
}

/** A view of the unit, in feet. x runs to the right from the unit's end at the left of the view, y up from the road. */
export interface Drawing {
  readonly view: View;
  readonly title: string;
  /** What has to be shown, with room for dimensions and roof pins. */
  readonly bounds: {
    readonly left: number;
    readonly right: number;
    readonly bottom: number;
    readonly top: number;
  };
  readonly shapes: readonly Shape[];
  readonly dimensions: readonly DimensionLine[];
  readonly pins: readonly Pin[];
}

const how: Readonly<Record<Size['from'], string>> = {
  measured: 'measured',
  seen: 'seen',
  label: 'label',
  figured: 'worked out',
  told: 'said',
  guessed: 'guessed',
  none: 'not known',
  assumed: 'assumed',
  'not settled': 'not settled',
};

function sizeLabel(size: Size, inInches: boolean): string {
  const doubt =
    size.plusOrMinus === undefined ? '' : ` ± ${plainNumber(size.plusOrMinus * (inInches ? 12 : 1), 1)}`;
  const number = inInches
    ? `${plainNumber(size.feet * 12, 0)}${doubt} in`
    : doubt === ''
      ? feetAndInches(size.feet)
      : `${plainNumber(size.feet, 1)}${doubt} ft`;
  return `${number} ${how[size.from]}`;
}

/** Slide-outs that somebody spoke of with their place, drawn as what they are: boxes that move out. */
function slides(facts: Facts, view: View, length: number, height: number): Shape[] {
  const side = view === 'road side' ? /^(road|full)/ : /^curb/;
  const where = new Set(
    facts.of('slide').flatMap((f) => (f.place !== undefined && side.test(f.place) ? [f.place] : [])),
  );
  const top = height - 2;
  return [...where].map((place) =>
    place === 'full-wall'
      ? box('dashed', length * 0.2, 2.6, length * 0.68, top - 2.6)
      : box(
          'dashed',
          length * (place.endsWith('rear') ? 0.66 : 0.24),
          2.6,
          length * (place.endsWith('rear') ? 0.22 : 0.3),
          top - 2.6,
        ),
  );
}

/**
 * One side of the unit with its faults. Faults of neither side (roof, inside, underneath) are pinned on the road side, so that each is pinned
 * exactly once over the two views. Pins carry the number of the fault in the list of faults, worst first.
 */
export function drawingOf(facts: Facts, findings: readonly Finding[], view: View): Drawing {
  const s = sizesOf(facts);
  const [L, H] = [s.length.feet, s.height.feet];
  const axles = axlesOf(s);
  const flip = view === 'curb side';
  const x = (along: number): number => (flip ? L - along : along);
  const faults = findings.filter(isFault).toSorted(byWorst);
  const shapes = [...bodyOf(s, view), ...slides(facts, view, L, H)];
  const first = s.frontOverhang.feet;
  return {
    view,
    title: `${view}, to scale, one square = 1 ft`,
    bounds: { left: -2, right: L + 4.2, bottom: -3.6, top: H + 1.6 },
    shapes: flip ? shapes.map((shape) => mirrored(shape, L)) : shapes,
    dimensions: [
      {
        what: 'wheelbase',
        from: [Math.min(x(first), x(first + s.wheelbase.feet)), -0.9],
        to: [Math.max(x(first), x(first + s.wheelbase.feet)), -0.9],
        label: sizeLabel(s.wheelbase, true),
        assumed: isDoubtful(s.wheelbase),
      },
      {
        what: 'length',
        from: [0, -2.2],
        to: [L, -2.2],
        label: sizeLabel(s.length, false),
        assumed: isDoubtful(s.length),
      },
      {
        what: 'height',
        from: [L + 1.6, 0],
        to: [L + 1.6, H],
        label: sizeLabel(s.height, false),
        assumed: isDoubtful(s.height),
      },
    ],
    pins: pinsOf(faults, view, L, H, axles).map((p) => ({ ...p, x: x(p.x) })),
  };
}
