// Why: a finding is looked for where it is: each is pinned once, on the side it belongs to, without covering another.
import { partOf } from '../../catalogue/index.ts';
import { isPlace, type PlaceSpot, places } from '../../catalogue/place.ts';
import type { Finding } from '../../judged/finding.ts';
import type { Verdict } from '../../judged/rule.ts';
import { subjectTitle } from '../plain-subject.ts';
import { type Axles, alongAtWheel } from './axles.ts';

/** A finding on the drawing. `id` is the finding's; `number` is its number in the list beside the drawing, from 1. */
export interface Pin {
  readonly id: string;
  readonly number: number;
  readonly verdict: Verdict;
  readonly x: number;
  readonly y: number;
  readonly label: string;
}

/** Where a part without a place is pinned: at its station. Approximate, for a drawing. */
const stationSpots: Readonly<Record<string, PlaceSpot>> = {
  papers: { along: 0.08, side: 'middle', height: 0.32 },
  front: { along: 0.01, side: 'middle', height: 0.45 },
  'curb-side': { along: 0.45, side: 'right', height: 0.45 },
  rear: { along: 0.97, side: 'middle', height: 0.4 },
  'road-side': { along: 0.55, side: 'left', height: 0.3 },
  wheels: { along: 0.2, side: 'middle', height: 0.1 },
  bays: { along: 0.42, side: 'middle', height: 0.22 },
  underneath: { along: 0.5, side: 'middle', height: 0.08 },
  roof: { along: 0.5, side: 'middle', height: 1 },
  cab: { along: 0.06, side: 'middle', height: 0.5 },
  living: { along: 0.35, side: 'middle', height: 0.5 },
  'bath-bedroom': { along: 0.8, side: 'middle', height: 0.5 },
  'systems-road': { along: 0.6, side: 'middle', height: 0.35 },
};
const nowhere: PlaceSpot = { along: 0.5, side: 'middle', height: 0.5 };

/** The spot of a finding: its place, else its part's only place, else its station. What is on the roof is pinned on the roof. */
export function spotOf(f: Pick<Finding, 'part' | 'place'>): PlaceSpot {
  const part = partOf(f.part);
  const only = part?.places.length === 1 ? part.places[0] : undefined;
  const place = f.place ?? only;
  const spot =
    place !== undefined && isPlace(place) ? places[place] : (stationSpots[part?.station ?? ''] ?? nowhere);
  if (part?.station === 'roof') return { ...spot, height: 1 };
  return part?.station === 'wheels' ? { ...spot, height: 0.1 } : spot;
}

/** Brakes and the like "at the front" are at the front axle, not at the bumper. */
function atAxle(f: Finding, axles: Axles): number | undefined {
  if (partOf(f.part)?.station !== 'wheels') return undefined;
  if (f.place === 'front') return axles.front;
  const isTrailerSide = axles.front === undefined && (f.place === 'left' || f.place === 'right');
  return f.place === 'rear' || isTrailerSide ? axles.rear[0] : undefined;
}

/** Feet from pin to pin: across, so that a pin leaves its neighbor's number free, and up. */
const reach = { across: 1.8, up: 1.3 };
/** House default, no source: rings of places to move a pin to, nearest first. */
const steps: readonly (readonly [number, number])[] = [0, 1, 2, 3, 4].flatMap((ring) =>
  ring === 0
    ? [[0, 0] as const]
    : (
        [
          [1, 0],
          [-1, 0],
          [0, 1],
          [0, -1],
          [1, 1],
          [-1, 1],
          [1, -1],
          [-1, -1],
        ] as const
      ).map(([x, y]) => [x * ring * reach.across, y * ring * reach.up] as const),
);

/** Pins of findings on one side, in the order given, in feet from the front end and from the road. */
export function pinsOf(
  findings: readonly Finding[],
  view: 'road side' | 'curb side',
  length: number,
  height: number,
  axles: Axles,
): readonly Pin[] {
  const pins: Pin[] = [];
  findings.forEach((f, i) => {
    const spot = spotOf(f);
    if ((spot.side === 'right') !== (view === 'curb side')) return;
    const wheel = f.place === undefined ? undefined : (alongAtWheel(f.place, axles) ?? atAxle(f, axles));
    const x0 = Math.min(length - 0.3, Math.max(0.3, wheel ?? spot.along * length));
    const y0 = Math.max(0.7, spot.height * (height - 1));
    const free = steps
      .map(([dx, dy]) => [x0 + dx, y0 + dy] as const)
      .find(
        ([x, y]) =>
          y > 0.3 &&
          x > -1 &&
          x < length + 1 &&
          pins.every((p) => Math.abs(p.x - x) >= reach.across - 0.01 || Math.abs(p.y - y) >= reach.up - 0.01),
      );
    const [x, y] = free ?? [x0, y0];
    pins.push({
      id: f.id,
      number: i + 1,
      verdict: f.verdict,
      x,
      y,
      label: `${f.verdict}: ${subjectTitle(f)}`,
    });
  });
  return pins;
}
