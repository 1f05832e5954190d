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
  'wheel_bearings',
]);
/** Parts along the sides of the coach: on the side the walk is at, unless said otherwise. */
const sided = new Set([
  'compartment_doors',
  'bay_storage',
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
  'fuel_fill',
]);
export const isPartSided = (part: string): boolean => sided.has(part);

/** Place words added to what is known of the place already: "inner" stays on its side, a new side starts anew. */
export function merge(part: string, before: PlaceParts | undefined, hit: PlaceHit): PlaceParts {
  const { from: _from, to: _to, many: _many, ...place } = hit;
  if (!before || hit.many) return place;
  if (!cornered.has(part))
    return before.side && place.side && before.side !== place.side ? place : { ...before, ...place };
  if (place.depth && !place.side) return { ...before, ...place };
  if (place.end && !place.side && before.side && !place.depth) return { side: before.side, ...place };
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
