// Why: a steady turn is a few right triangles; they are drawn here once. All lengths in one unit.

/** Radius at the middle of the rear axle, from that at the middle of the front axle. NaN when the coach is longer than the turn. */
export const rearRadius = (frontRadius: number, wheelbase: number): number =>
  Math.sqrt(frontRadius ** 2 - wheelbase ** 2);

/** Radius of the inside of the body at the rear axle. */
export const insideRadius = (frontRadius: number, wheelbase: number, width: number): number =>
  rearRadius(frontRadius, wheelbase) - width / 2;

/** Radius of the outer front wheel, or of the outer front corner with the front overhang: what clears a wall. */
export const outerRadius = (rear: number, wheelbase: number, width: number, frontOverhang = 0): number =>
  Math.hypot(rear + width / 2, wheelbase + frontOverhang);

/** How far the outer rear corner swings beyond the side of the body. */
export const swing = (rear: number, width: number, rearOverhang: number): number =>
  Math.hypot(rear + width / 2, rearOverhang) - (rear + width / 2);

/** How far inside the front axle the last axle runs: a coach, and what it tows from a hitch behind its axle. */
export const offtracking = (radius: number, wheelbases: readonly number[], hitchBehindAxle = 0): number =>
  radius - Math.sqrt(radius ** 2 - wheelbases.reduce((sum, l) => sum + l ** 2, 0) + hitchBehindAxle ** 2);

/** Radius at the middle of the front axle from the cut of the inner wheel (degrees) and the distance between the king pins. */
export const frontRadiusFromCut = (wheelbase: number, cut: number, kingPins: number): number =>
  Math.hypot(wheelbase / Math.tan((cut * Math.PI) / 180) + kingPins / 2, wheelbase);
