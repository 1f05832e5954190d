// Why: place words add up over clauses, by rules that differ for what is at the corners and what is along the sides.
import type { Clause } from './clause.ts';
import type { NumberSpan } from './number-span.ts';
import type { PlaceHit, PlaceParts } from './place-words.ts';

/** Parts of which there is one at each corner. */
export const cornered = new Set([
  'tire',
  'wheels_lugs',
  'brake_drum_rotor',
  'valve_stems',
  'brake_chambers',
  'brake_trailer',
  'wheel_bearings',
]);
/** Parts along the sides of the coach: on the side the walk is at, unless said otherwise. */
const sided = new Set([
  'compartment_doors',
  'bay_storage',
  'bay_moisture',
  'battery_disconnect',
  'patio_awning',
  'window_awnings',
  'awning_light',
  'body_paint',
  'sidewall_structure',
  'outside_tv',
  'outside_kitchen',
  'outside_shower',
  'entry_step',
  'entry_door',
  'screen_door',
  'grab_handle',
  'fuel_fill',
]);
/** Also along a side, but named from anywhere: the side of the walk is only told with them, not put on record. */
const alongside = new Set([
  'slide',
  'slide_seals',
  'dump_valves',
  'tank_flush',
  'water_bay',
  'city_water',
  'black_tank',
  'gray_tank',
  'windows',
]);
export const isAlongside = (part: string): boolean => alongside.has(part);
/** What belongs to the door is on the door's side whatever side the walk was at before. */
const atDoor = new Set([
  'patio_awning',
  'awning_light',
  'entry_step',
  'entry_door',
  'screen_door',
  'grab_handle',
  'outside_kitchen',
  'outside_tv',
]);
/** The side a part takes from where the walk is. */
export const walkSideOf = (part: string, side: PlaceParts | undefined): PlaceParts | undefined =>
  side && sided.has(part) && !(side.side === 'left' && atDoor.has(part)) ? side : undefined;

const flipped = (side: PlaceParts['side']): PlaceParts['side'] =>
  side === undefined ? undefined : side === 'left' ? 'right' : 'left';
const only = (p: PlaceParts): PlaceParts => ({
  ...(p.side ? { side: p.side } : {}),
  ...(p.end ? { end: p.end } : {}),
  ...(p.depth ? { depth: p.depth } : {}),
  ...(p.spot ? { spot: p.spot } : {}),
});

/** "The other side", "its mate": the place across from the one before; undefined where nothing is known of that. */
export function across(before: PlaceParts | undefined, other: PlaceHit['other']): PlaceParts | undefined {
  if (!before) return undefined;
  if (other === 'one' && before.depth)
    return only({ ...before, depth: before.depth === 'inner' ? 'outer' : 'inner' });
  if (!before.side) return undefined;
  const side = flipped(before.side);
  if (other === 'corner' && before.end)
    return only({ side, end: before.end === 'front' ? 'rear' : 'front', spot: before.spot });
  return only({ side, end: before.end, spot: before.spot });
}

/** Place words added to what is known of the place already: "inner" stays on its side, a new side starts anew. */
export function merge(part: string, before: PlaceParts | undefined, hit: PlaceHit): PlaceParts | undefined {
  if (hit.other) return across(before, hit.other) ?? before;
  const place = only(cornered.has(part) && hit.spot !== 'tag' ? { ...hit, spot: undefined } : hit);
  if (!before || hit.many) return place;
  if (!cornered.has(part))
    return before.side && place.side && before.side !== place.side ? place : { ...before, ...place };
  if (place.spot) return place;
  // one of a pair is on an axle with pairs: never in front
  if (place.depth && !place.side)
    return before.end === 'front' && !place.end
      ? { side: before.side, ...place }
      : { ...only(before), ...place };
  if (place.end && !place.side && before.side && !place.depth) return { side: before.side, ...place };
  // "nine on the left, eight on the right": of the same axle
  if (place.side && !place.end && !place.depth) return only({ end: before.end, spot: before.spot, ...place });
  if (place.side && place.depth && !place.end && before.end !== 'front') return { ...place, end: before.end };
  return place.side || place.end || place.depth ? place : before;
}

/**
 * Of several numbers in a clause each has its own place: the words before it, or, where the first number has none
 * before it, the words after each ("nineteen at the rear and eleven up front"). Undefined where that says nothing.
 */
export function besideNumber(
  clause: Clause,
  hits: readonly PlaceHit[],
  span: NumberSpan,
): PlaceHit[] | undefined {
  const numbers = clause.numbers;
  const k = numbers.indexOf(span);
  const first = numbers[0];
  if (k < 0 || !first || numbers.length < 2 || hits.length < 2) return undefined;
  const leads = hits.some((h) => h.to <= first.from);
  const from = leads ? (numbers[k - 1]?.to ?? clause.from) : span.to;
  const to = leads ? span.from : (numbers[k + 1]?.from ?? clause.to);
  const own = hits.filter((h) => h.from >= from && h.to <= to);
  return own.length > 0 ? own : undefined;
}
