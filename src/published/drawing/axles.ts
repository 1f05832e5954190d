// Why: pins of tires and brakes must sit on the wheels as drawn, wherever the axles of this unit are.
import { isMotorized } from '../../catalogue/vehicle-kind.ts';
import type { Sizes } from './sizes.ts';

/** Along the unit from its front end, in feet: the front axle (none on a trailer) and those of the rear group, front one first. */
export interface Axles {
  readonly front: number | undefined;
  readonly rear: readonly number[];
}

export function axlesOf(s: Sizes): Axles {
  const front = s.frontOverhang.feet;
  const middle = front + s.wheelbase.feet;
  if (!isMotorized(s.kind)) {
    const apart = s.tireRadius * 2 + 0.5;
    return {
      front: undefined,
      rear: Array.from({ length: s.axles }, (_, i) => middle + (i - (s.axles - 1) / 2) * apart),
    };
  }
  return { front, rear: s.tag ? [middle, middle + s.tireRadius * 2 + 0.6] : [middle] };
}

/** Where a tire's place lies along the unit; undefined for a place that is not at a wheel. Inner tires are set off so that both pins show. */
export function alongAtWheel(place: string, axles: Axles): number | undefined {
  const numbered = /axle-(\d)$/.exec(place);
  if (numbered) return axles.rear[Number(numbered[1]) - 1] ?? axles.rear.at(-1);
  if (/^(left|right)-tag$/.test(place)) return axles.rear[1] ?? axles.rear[0];
  if (/^(left|right)-front$/.test(place)) return axles.front;
  const rear = /^(left|right)-(rear(-(inner|outer))?|inner|outer)$/.exec(place);
  if (!rear) return undefined;
  const first = axles.rear[0];
  return first === undefined
    ? undefined
    : first + (place.endsWith('inner') ? -0.7 : place.endsWith('outer') ? 0.7 : 0);
}
