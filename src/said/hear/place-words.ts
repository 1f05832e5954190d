// Why: where something is, in the words people use for it, becomes one plain place.
import { partOf } from '../../catalogue/index.ts';
import { partPhrases } from './lexicon.ts';
import {
  depths,
  ends,
  fillers,
  notAfter,
  numbered,
  numberWord,
  sideNeeds,
  sides,
  spots,
} from './place-table.ts';
import type { Word } from './word.ts';

/** What is known of a place: a side, an end, inner or outer, or a spot with a name. */
export interface PlaceParts {
  readonly side?: 'left' | 'right';
  readonly end?: 'front' | 'rear' | 'middle';
  readonly depth?: 'inner' | 'outer';
  readonly spot?: string;
  /** "Rears", "fronts": those of both sides. */
  readonly many?: true;
}

/** Place words found in the stream. */
export interface PlaceHit extends PlaceParts {
  readonly from: number;
  readonly to: number;
}

/** The numbered place at `i`, if one stands there: "leg two". */
export function numberedAt(words: readonly Word[], i: number): PlaceHit | undefined {
  const w = words[i];
  const n = words[i + 1];
  if (!w || !n || w.stop > 0 || !numbered.has(w.norm)) return undefined;
  const number = numberWord[n.norm];
  if (!number || (number.length === 1 && (w.norm === 'battery' || !n.capital))) return undefined;
  return { from: i, to: i + 2, spot: `${w.norm}-${number}` };
}

/** The place words that begin at `i`. */
export function placeAt(words: readonly Word[], i: number): PlaceHit | undefined {
  const number = numberedAt(words, i);
  if (number) return number;
  let side: PlaceParts['side'];
  let end: PlaceParts['end'];
  let depth: PlaceParts['depth'];
  let spot: string | undefined;
  let at = i;
  let to = i;
  while (at < words.length && at - i < 8) {
    const n = words[at]?.norm ?? '';
    const after = words[at + 1]?.norm;
    const closed = at > i && (words[at - 1]?.stop ?? 0) > 0;
    if (closed) break;
    if (
      n in sides &&
      !side &&
      (!sideNeeds.has(n) ||
        after === 'side' ||
        after === "'s" ||
        after === undefined ||
        isPlaceWord(after) ||
        at > i ||
        words[at]?.stop !== 0 ||
        sideNoun.has(after ?? '') ||
        (words[at]?.stop === 0 && partPhrases.at(words, at + 1) !== undefined))
    ) {
      if (
        n === 'right' &&
        ((words[at]?.stop === 0 && adverbRight.test(after ?? '')) ||
          words[at - 1]?.norm === 'all' ||
          words[at - 1]?.norm === "that's" ||
          (words[at - 1]?.norm === "'s" && words[at]?.stop !== 0))
      )
        break;
      if (
        n === 'left' &&
        (words[at - 1]?.norm === 'is' ||
          words[at - 1]?.norm === "'s" ||
          words[at - 1]?.norm === 'percent' ||
          words[at - 1]?.norm === 'he' ||
          words[at - 1]?.norm === 'i' ||
          words[at - 1]?.norm === 'they' ||
          words[at - 1]?.norm === 'got')
      )
        break;
      side = sides[n];
      end ??= n.length === 2 ? ends[n] : undefined;
    } else if (
      n in ends &&
      !end &&
      !(
        (n === 'drive' || n === 'drives' || n === 'steer' || n === 'steering') &&
        at === i &&
        !side &&
        !/^(?:tires?|axle|position|outer|inner)$/.test(after ?? '')
      )
    ) {
      if (n === 'front' && after === 'of') break;
      if (n === 'back' && /^(?:up|to|on|in|and|out|then|after|when|into)$/.test(after ?? '')) break;
      if (
        n === 'back' &&
        /^(?:go|going|come|comes|coming|put|moving|way|get|came|goes|plug|plugged|be|turn)$/.test(
          words[at - 1]?.norm ?? '',
        )
      )
        break;
      end = ends[n];
    } else if (
      n in depths &&
      !depth &&
      !(
        at === i &&
        to === i &&
        /^(?:inside|outside)$/.test(n) &&
        words[at]?.stop !== 0 &&
        (i === 0 || (words[i - 1]?.stop ?? 2) === 2)
      ) &&
      (side ||
        end ||
        (/^(?:inner|outer)$/.test(n) && words[at]?.capital) ||
        /^(?:one|dual|tire|tyre|tires|'s|is|wheel)$/.test(after ?? '') ||
        words[at]?.stop !== 0)
    )
      depth = depths[n];
    else if (
      n in spots &&
      !spot &&
      at === i &&
      !(n === 'tag' && !/^(?:axle|tires?|'s|left|right|is)$/.test(after ?? ''))
    )
      spot = spots[n];
    else if (n in spots && !spot && (spots[n] === 'bedroom' || spots[n] === 'tag')) spot = spots[n];
    else if (at > i && fillers.has(n) && (n !== 'one' || at > to - 1)) {
      at++;
      continue;
    } else break;
    at++;
    to = at;
  }
  if (to === i) return undefined;
  if (
    !side &&
    !depth &&
    !spot &&
    end &&
    notAfter.has(words[to]?.norm ?? '') &&
    words[to - 1]?.stop === 0 &&
    words[to]?.norm !== 'vent'
  )
    return undefined;
  while (
    to < words.length &&
    (words[to]?.norm === 'side' || words[to]?.norm === 'corner' || words[to]?.norm === "'s") &&
    words[to - 1]?.stop === 0 &&
    words[to - 1]?.norm !== 'side'
  )
    to++;
  return {
    from: i,
    to,
    ...(side ? { side } : {}),
    ...(end ? { end } : {}),
    ...(depth ? { depth } : {}),
    ...(spot ? { spot } : {}),
    ...(to - i === 1 &&
    /^(?:rears|fronts|backs|steers|drives|duals|outers|inners)$/.test(words[i]?.norm ?? '')
      ? { many: true as const }
      : {}),
  };
}

/** "Right on it", "right there": no side. */
const adverbRight =
  /^(?:now|there|up|here|behind|at|next|on|in|by|under|above|over|off|through|where|away|down|before|after|along|into|out|about|around|beside|below|inside|back|when)$/;
const sideNoun = new Set(
  'slide sidewall duals dual steer tire wall rear front door bedroom seat corner window awning bay topper outer inner jack mirror jacks drive tag and wheel sofa bath airbag'.split(
    ' ',
  ),
);
const isPlaceWord = (n: string): boolean => n in sides || n in ends || n in depths;

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
  const bits = [
    p.spot && p.spot !== 'tag' ? p.spot : undefined,
    p.side,
    p.end ?? (p.depth && part === 'tire' ? 'rear' : undefined),
    depthOf(part, p.depth),
    p.spot === 'tag' ? 'tag' : undefined,
  ].filter((b) => b !== undefined);
  if (p.spot === 'tag') return p.side ? `${p.side}-tag` : 'tag';
  return bits.length === 0 ? undefined : bits.join('-');
}

/** The place in plain words: "left rear inner", "driver side front". */
export function placeWords(place: string): string {
  return place
    .replace(/^curb\b/, 'passenger side')
    .replace(/^road\b/, 'driver side')
    .replace(/^bath\b/, 'bathroom')
    .replaceAll('-', ' ');
}
