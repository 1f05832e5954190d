// The catalogue as lists and look-ups. The content is in the files beside this one; this file only gathers it.
import { bathBedroomParts } from './bath-bedroom.ts';
import { baysParts } from './bays.ts';
import { cabParts } from './cab.ts';
import { curbSideParts } from './curb-side.ts';
import { frontParts } from './front.ts';
import { generalAspects } from './general-aspect.ts';
import { livingParts } from './living.ts';
import { papersParts } from './papers.ts';
import type { Aspect, Part, Station } from './part.ts';
import { rearParts } from './rear.ts';
import { roadSideParts } from './road-side.ts';
import { roofParts } from './roof.ts';
import { smallerParts } from './smaller.ts';
import { stations } from './station.ts';
import { systemsRoadParts } from './systems-road.ts';
import { underneathParts } from './underneath.ts';
import type { VehicleKind } from './vehicle-kind.ts';
import { wheelsParts } from './wheels.ts';
import { wholeParts } from './whole.ts';

/** Every part, in the order of the walk. */
export const parts: readonly Part[] = [
  ...wholeParts,
  ...papersParts,
  ...frontParts,
  ...curbSideParts,
  ...rearParts,
  ...roadSideParts,
  ...wheelsParts,
  ...baysParts,
  ...underneathParts,
  ...roofParts,
  ...cabParts,
  ...livingParts,
  ...bathBedroomParts,
  ...systemsRoadParts,
  ...smallerParts,
];

const partById = new Map(parts.map((p) => [p.id, p]));
const stationById = new Map(stations.map((s) => [s.id, s]));
const generalById = new Map(generalAspects.map((a) => [a.id, a]));
const aspectByKey = new Map(parts.flatMap((p) => p.aspects.map((a) => [`${p.id}/${a.id}`, a] as const)));

/** The part of that id, if there is one. */
export const partOf = (id: string): Part | undefined => partById.get(id);

/** The aspect of that part, its own or one of those that every part has. */
export const aspectOf = (part: string, aspect: string): Aspect | undefined =>
  aspectByKey.get(`${part}/${aspect}`) ?? generalById.get(aspect);

/** The station of that id, if there is one. */
export const stationOf = (id: string): Station | undefined => stationById.get(id);

/** The parts that a kind of vehicle may have. */
export const partsFor = (kind: VehicleKind): readonly Part[] => parts.filter((p) => p.kinds.includes(kind));

/**
 * Names under which a part and its place may also be written: one name for each corner. A file that uses them is read
 * as the part with its place.
 */
export const otherNames: Readonly<Record<string, { readonly part: string; readonly place?: string }>> = {
  tire_lf: { part: 'tire', place: 'left-front' },
  tire_rf: { part: 'tire', place: 'right-front' },
  tire_lro: { part: 'tire', place: 'left-rear-outer' },
  tire_lri: { part: 'tire', place: 'left-rear-inner' },
  tire_rri: { part: 'tire', place: 'right-rear-inner' },
  tire_rro: { part: 'tire', place: 'right-rear-outer' },
  tire_tag: { part: 'tire' },
  tire_trailer: { part: 'tire' },
  slide_curb: { part: 'slide' },
  slide_road: { part: 'slide' },
  body_paint_curb: { part: 'body_paint', place: 'curb' },
  body_paint_road: { part: 'body_paint', place: 'road' },
};

export { stations };
