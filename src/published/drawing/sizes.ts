// Why: a drawing to scale needs sizes; each says how it is known, and one that nobody knows is assumed in the open.
import { type VehicleKind, vehicleKinds } from '../../catalogue/vehicle-kind.ts';
import type { Facts } from '../../known/facts.ts';
import { convert } from '../../units/quantity.ts';
import { type Basis, basisOf } from '../basis.ts';

/** A length in feet and how it is known; where sources disagree, the best supported of them, marked so. */
export interface Size {
  readonly feet: number;
  readonly from: Basis | 'assumed' | 'not settled';
  readonly plusOrMinus?: number;
}

export interface Sizes {
  readonly kind: VehicleKind;
  readonly length: Size;
  /** Over everything on the roof. */
  readonly height: Size;
  /** Front to rear axle; of a trailer, the hitch to the middle of its axles. */
  readonly wheelbase: Size;
  readonly frontOverhang: Size;
  readonly tireRadius: number;
  readonly tag: boolean;
  /** Axles in the group at the rear: two or three on trailers. */
  readonly axles: number;
}

/** House defaults, no source: what a unit of that kind is drawn as until somebody measures it. `base` and `front` are shares of the length. */
const assumed: Readonly<
  Record<
    VehicleKind,
    { length: number; height: number; base: number; front: number; tire: number; axles: number }
  >
> = {
  'class-a-diesel': { length: 38, height: 12.5, base: 0.55, front: 0.165, tire: 1.7, axles: 1 },
  'class-a-gas': { length: 34, height: 12.3, base: 0.58, front: 0.1, tire: 1.5, axles: 1 },
  'class-b': { length: 21, height: 9.4, base: 0.66, front: 0.155, tire: 1.2, axles: 1 },
  'class-c': { length: 28, height: 11.2, base: 0.62, front: 0.115, tire: 1.3, axles: 1 },
  'fifth-wheel': { length: 34, height: 13, base: 0.56, front: 0.065, tire: 1.2, axles: 2 },
  'travel-trailer': { length: 28, height: 10.8, base: 0.6, front: 0.01, tire: 1.15, axles: 2 },
};

function sizeOf(facts: Facts, part: string, aspect: string): Size | undefined {
  const fact = facts.get(part, aspect);
  if (fact === undefined || fact.standing === 'unknown' || fact.value.is !== 'quantity') return undefined;
  const feet = (
    n: number,
    unit = fact.value.is === 'quantity' ? fact.value.unit : '[ft_i]',
  ): number | undefined => {
    try {
      return convert(n, unit, '[ft_i]');
    } catch {
      // A length given in a unit that is none draws nothing.
      return undefined;
    }
  };
  const value = feet(fact.value.value);
  const doubt = fact.value.plusOrMinus === undefined ? undefined : feet(fact.value.plusOrMinus);
  return value === undefined || value <= 0
    ? undefined
    : {
        feet: value,
        from: fact.standing === 'conflict' ? 'not settled' : basisOf(fact),
        ...(doubt === undefined ? {} : { plusOrMinus: doubt }),
      };
}

const guess = (feet: number): Size => ({ feet, from: 'assumed' });

/** Drawn dashed: nobody knows it, or the sources disagree. */
export const isDoubtful = (size: Size): boolean =>
  size.from === 'assumed' || size.from === 'not settled' || size.from === 'guessed';

/** The sizes to draw with. A unit of no known kind is drawn as the first kind of the list, with every size assumed that is not known. */
export function sizesOf(facts: Facts): Sizes {
  const kind = facts.kind ?? vehicleKinds[0];
  const house = assumed[kind];
  const length = sizeOf(facts, 'coach', 'length') ?? guess(house.length);
  const axleDistance = sizeOf(facts, 'coach', 'wheelbase') ?? sizeOf(facts, 'chassis_label', 'wheelbase');
  const wheelbase =
    axleDistance !== undefined && axleDistance.feet < length.feet
      ? axleDistance
      : guess(length.feet * house.base);
  const spare = length.feet - wheelbase.feet;
  const front = sizeOf(facts, 'coach', 'front_overhang');
  const rear = sizeOf(facts, 'coach', 'rear_overhang');
  const fromRear = rear !== undefined && rear.feet < spare ? { ...rear, feet: spare - rear.feet } : undefined;
  return {
    kind,
    length,
    height: sizeOf(facts, 'coach', 'height') ?? guess(house.height),
    wheelbase,
    frontOverhang:
      front !== undefined && front.feet < spare
        ? front
        : (fromRear ?? guess((spare * house.front) / (1 - house.base))),
    tireRadius: house.tire,
    tag: facts.every().some((f) => f.place === 'left-tag' || f.place === 'right-tag'),
    axles: facts.every().some((f) => f.place?.endsWith('axle-3')) ? 3 : house.axles,
  };
}
