// Why: a place heard becomes one plain place of the record, and that again plain words.
import { partOf } from '../../catalogue/index.ts';

/** What is known of a place: a side, an end, inner or outer, or a spot with a name. */
export interface PlaceParts {
  readonly side?: 'left' | 'right' | undefined;
  readonly end?: 'front' | 'rear' | 'middle' | undefined;
  readonly depth?: 'inner' | 'outer' | undefined;
  readonly spot?: string | undefined;
  /** "Rears", "fronts": those of both sides. */
  readonly many?: true;
  /** The other side, corner or one of what was talked about. */
  readonly other?: 'side' | 'corner' | 'one';
}

/** Place words found in the stream. */
export interface PlaceHit extends PlaceParts {
  readonly from: number;
  readonly to: number;
}

const curbRoad = (part: string): boolean =>
  partOf(part)?.places.some((p) => p.startsWith('curb') || p.startsWith('road')) ?? false;

/** What stands in pairs beside one another: only there is a thing inner or outer; elsewhere it is inside or outside. */
const paired = new Set(['tire', 'wheels_lugs', 'valve_stems', 'wheel_bearings', 'brake_drum_rotor']);
const depthOf = (part: string, depth: PlaceParts['depth']): string | undefined =>
  depth === undefined || paired.has(part) ? depth : depth === 'outer' ? 'outside' : 'inside';

/** The place as the record writes it: "left-rear-inner"; sides of the coach are curb and road where the part's places are. */
export function placeIdOf(part: string, p: PlaceParts): string | undefined {
  if (curbRoad(part) && p.side) {
    const side = p.side === 'left' ? 'road' : 'curb';
    return p.end && p.end !== 'middle' ? `${side}-${p.end}` : side;
  }
  if (p.spot === 'tag') return p.side ? `${p.side}-tag` : 'tag';
  const bits = [
    p.spot,
    p.side,
    p.end ?? (p.depth && part === 'tire' ? 'rear' : undefined),
    depthOf(part, p.depth),
  ].filter((b) => b !== undefined);
  return bits.length === 0 ? undefined : bits.join('-');
}

/** The place in plain words: "left rear inner", "driver side front". */
export function placeWords(place: string): string {
  return place
    .replace(/^curb\b/, 'passenger side')
    .replace(/^road\b/, 'driver side')
    .replace(/^bath\b/, 'bathroom')
    .replace(/^outside$/, 'exterior')
    .replaceAll('-', ' ');
}
