// Why: at which corners a kind of vehicle has a tire, so that one that nobody read is asked for by name.
import type { Facts } from '../../known/facts.ts';

const fronts = ['left-front', 'right-front'] as const;
const duals = ['left-rear-outer', 'left-rear-inner', 'right-rear-inner', 'right-rear-outer'] as const;
const trailerFour = ['left-axle-1', 'right-axle-1', 'left-axle-2', 'right-axle-2'] as const;

/** True of a front corner of a vehicle that drives itself. */
export const isSteerPlace = (place: string): boolean =>
  place === 'front' || place === 'left-front' || place === 'right-front';

/** Front tires of a vehicle that drives itself. */
export const steerTirePlaces = (facts: Facts): readonly string[] =>
  facts.kind === 'fifth-wheel' || facts.kind === 'travel-trailer' ? [] : fronts;

/** The other tires: duals of a coach, single rears of a van, two axles of a trailer (trade practice; a tag or third axle is added when it is named). */
export function otherTirePlaces(facts: Facts): readonly string[] {
  const usual: readonly string[] =
    facts.kind === 'fifth-wheel' || facts.kind === 'travel-trailer'
      ? trailerFour
      : facts.kind === 'class-b'
        ? ['left-rear', 'right-rear']
        : duals;
  const named = facts
    .of('tire')
    .flatMap((f) => (f.place !== undefined && /tag|axle-3/.test(f.place) ? [f.place] : []));
  return [...new Set([...usual, ...named])];
}

/** Every tire. */
export const tirePlaces = (facts: Facts): readonly string[] => [
  ...steerTirePlaces(facts),
  ...otherTirePlaces(facts),
];
