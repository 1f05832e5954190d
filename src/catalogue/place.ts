// Why: places are plain words, the same for every part; "left" is the driver's side of a left-hand-drive unit.

/** Where a place lies on the unit: along (0 front .. 1 rear), side, and height (0 road .. 1 roof). For drawing a pin. */
export interface PlaceSpot {
  readonly along: number;
  readonly side: 'left' | 'right' | 'both' | 'middle';
  readonly height: number;
}

/** Place -> where it is. Approximate positions for a drawing, not measurements. */
export const places = {
  front: { along: 0.01, side: 'middle', height: 0.45 },
  middle: { along: 0.5, side: 'middle', height: 0.5 },
  rear: { along: 0.99, side: 'middle', height: 0.45 },
  left: { along: 0.5, side: 'left', height: 0.45 },
  right: { along: 0.5, side: 'right', height: 0.45 },
  road: { along: 0.5, side: 'left', height: 0.4 },
  curb: { along: 0.5, side: 'right', height: 0.4 },
  'left-front': { along: 0.13, side: 'left', height: 0.1 },
  'right-front': { along: 0.13, side: 'right', height: 0.1 },
  'left-rear': { along: 0.72, side: 'left', height: 0.1 },
  'right-rear': { along: 0.72, side: 'right', height: 0.1 },
  'left-rear-outer': { along: 0.72, side: 'left', height: 0.1 },
  'left-rear-inner': { along: 0.7, side: 'left', height: 0.1 },
  'right-rear-inner': { along: 0.7, side: 'right', height: 0.1 },
  'right-rear-outer': { along: 0.72, side: 'right', height: 0.1 },
  'left-tag': { along: 0.8, side: 'left', height: 0.1 },
  'right-tag': { along: 0.8, side: 'right', height: 0.1 },
  'left-axle-1': { along: 0.55, side: 'left', height: 0.1 },
  'left-axle-2': { along: 0.65, side: 'left', height: 0.1 },
  'left-axle-3': { along: 0.75, side: 'left', height: 0.1 },
  'right-axle-1': { along: 0.55, side: 'right', height: 0.1 },
  'right-axle-2': { along: 0.65, side: 'right', height: 0.1 },
  'right-axle-3': { along: 0.75, side: 'right', height: 0.1 },
  'left-outer': { along: 0.72, side: 'left', height: 0.1 },
  'left-inner': { along: 0.7, side: 'left', height: 0.1 },
  'curb-front': { along: 0.3, side: 'right', height: 0.55 },
  'curb-rear': { along: 0.75, side: 'right', height: 0.55 },
  'road-front': { along: 0.3, side: 'left', height: 0.55 },
  'road-rear': { along: 0.75, side: 'left', height: 0.55 },
  'full-wall': { along: 0.5, side: 'left', height: 0.55 },
  outside: { along: 0.35, side: 'right', height: 0.4 },
  inside: { along: 0.35, side: 'middle', height: 0.5 },
  'driver-door': { along: 0.12, side: 'left', height: 0.45 },
  'rear-left': { along: 0.97, side: 'left', height: 0.5 },
  'rear-right': { along: 0.97, side: 'right', height: 0.5 },
  bath: { along: 0.7, side: 'middle', height: 0.5 },
  bay: { along: 0.4, side: 'right', height: 0.22 },
  bedroom: { along: 0.88, side: 'middle', height: 0.5 },
  cab: { along: 0.06, side: 'middle', height: 0.5 },
  corners: { along: 0.98, side: 'both', height: 0.6 },
  dash: { along: 0.05, side: 'middle', height: 0.45 },
  door: { along: 0.2, side: 'right', height: 0.4 },
  edges: { along: 0.5, side: 'both', height: 0.97 },
  engine: { along: 0.94, side: 'middle', height: 0.2 },
  entry: { along: 0.2, side: 'right', height: 0.3 },
  frame: { along: 0.5, side: 'middle', height: 0.14 },
  galley: { along: 0.45, side: 'middle', height: 0.5 },
  hall: { along: 0.6, side: 'middle', height: 0.5 },
  high: { along: 0.99, side: 'middle', height: 0.85 },
  living: { along: 0.3, side: 'middle', height: 0.5 },
  roof: { along: 0.5, side: 'middle', height: 1 },
  seams: { along: 0.98, side: 'both', height: 0.98 },
  under: { along: 0.5, side: 'middle', height: 0.1 },
  windows: { along: 0.5, side: 'both', height: 0.68 },
} as const satisfies Record<string, PlaceSpot>;

export type Place = keyof typeof places;

/** True when the text is a place of this house. */
export const isPlace = (text: string): text is Place => Object.hasOwn(places, text);

/** "left-rear-inner" as a person says it: "left rear inner". */
export const placeName = (place: string): string => place.replaceAll('-', ' ');
