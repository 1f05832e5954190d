// Why: where a thing is, is said as side, end and depth in any order, with small words between; and many of these words mean other things.
import { partPhrases } from './lexicon.ts';
import { itemAt } from './number-item.ts';
import * as t from './place-table.ts';
import type { PlaceHit, PlaceParts } from './place-words.ts';
import type { Word } from './word.ts';

const numberLike =
  /^(?:\d.*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|a|hundred)$/;
const articles =
  /^(?:the|a|an|this|that|your|my|his|her|its|our|each|both|either|far|other|whole|all|same|every)$/;
const placing =
  /^(?:on|at|in|to|from|toward|towards|upper|lower|along|off|of|near|by|around|behind|top|bottom|and|down|up|low|high|under|over)$/;

const normAt = (words: readonly Word[], i: number): string => words[i]?.norm ?? '';
/** True when nothing is written between word `i` and the next. */
const joined = (words: readonly Word[], i: number): boolean => words[i]?.stop === 0;
const isPlaceWord = (n: string): boolean => n in t.sides || n in t.ends || n in t.depths || n in t.corners;

/** The numbered place at `i`, if one stands there: "leg two". */
export function numberedAt(words: readonly Word[], i: number): PlaceHit | undefined {
  const w = words[i];
  const n = words[i + 1];
  if (!w || !n || w.stop > 0 || !t.numbered.has(w.norm)) return undefined;
  const number = t.numberWord[n.norm];
  if (!number || (number.length === 1 && (w.norm === 'battery' || !n.capital))) return undefined;
  return { from: i, to: i + 2, spot: `${w.norm}-${number}` };
}

/** True when what follows a side word shows that a side is meant. */
function leadsOn(words: readonly Word[], i: number): boolean {
  if (!joined(words, i)) return false;
  const next = normAt(words, i + 1);
  if (next === 'side' || next === 'hand' || next === "'s" || isPlaceWord(next) || t.sideNouns.has(next))
    return true;
  return partPhrases.at(words, i + 1) !== undefined;
}

/** The other side is named close by: "one twenty-one left, one sixteen right". */
function hasTwin(words: readonly Word[], i: number, twin: string): boolean {
  for (let k = Math.max(0, i - 9); k < i + 10; k++) if (normAt(words, k) === twin) return true;
  return false;
}

/** The side said at `i`; `within` where place words stand right before it. */
function sideAt(words: readonly Word[], i: number, within: boolean): PlaceParts['side'] {
  const n = normAt(words, i);
  const side = t.sides[n];
  if (!side) return undefined;
  const next = normAt(words, i + 1);
  const before = i > 0 && joined(words, i - 1) ? normAt(words, i - 1) : '';
  if (t.onlyWithSide.has(n)) {
    if (next !== 'side' || !joined(words, i)) return undefined;
    return n === 'door' && /^(?:off|non|opposite)$/.test(before) ? 'left' : side;
  }
  if (t.sideNeeds.has(n)) {
    if (within || leadsOn(words, i)) return next === 'seat' && n.startsWith('driver') ? side : side;
    // "right in front of the driver"
    if (before === 'the' && normAt(words, i - 2) === 'of' && normAt(words, i - 3) === 'front') return side;
    if (!joined(words, i))
      return before === '' || !/^(?:a|the|this|every|any|no|down|hit)$/.test(before) ? side : undefined;
    if (/^(?:street|curb|kerb)$/.test(n)) return undefined;
    return t.personVerbs.has(next) || /^(?:a|the|every|any|no)$/.test(before) ? undefined : side;
  }
  if (n !== 'left' && n !== 'right') return side;
  if (within) return n === 'right' && joined(words, i) && next === 'now' ? undefined : side;
  const aimed = before === 'to' || (before === 'the' && normAt(words, i - 2) === 'to');
  if (aimed && !leadsOn(words, i) && next !== 'of') return undefined;
  if (n === 'right') {
    if (joined(words, i) && t.adverbRight.has(next) && before !== 'the' && before !== 'on') return undefined;
    if (t.verbBeforeRight.has(before) && !leadsOn(words, i)) return undefined;
  } else if (
    t.verbBeforeLeft.has(before) &&
    !(leadsOn(words, i) && !/^(?:i|we|he|she|they|you)$/.test(before))
  )
    return undefined;
  if (leadsOn(words, i)) return side;
  if (articles.test(before) || placing.test(before)) return side;
  if (before === '' && (joined(words, i) ? numberLike.test(next) : true)) return side;
  return hasTwin(words, i, n === 'left' ? 'right' : 'left') ? side : undefined;
}

/** The end said at `i`. */
function endAt(words: readonly Word[], i: number, within: boolean): PlaceParts['end'] {
  const n = normAt(words, i);
  const end = t.ends[n];
  if (!end) return undefined;
  const next = joined(words, i) ? normAt(words, i + 1) : '';
  const before = i > 0 && joined(words, i - 1) ? normAt(words, i - 1) : '';
  switch (n) {
    case 'front':
      return next === 'of' && before !== 'the' && !within ? undefined : end;
    case 'back': {
      if (within && !/^(?:and|up|to|in|out)$/.test(next)) return end;
      if (
        next !== '' &&
        t.notBehindBack.has(next) &&
        !(next === 'of' && before === 'the') &&
        !(/^(?:the|in)$/.test(before) && !/^(?:road|roads|yard|lot|order|pocket|side)$/.test(next))
      )
        return undefined;
      if (t.verbBeforeBack.has(before)) return undefined;
      if (articles.test(before) || /^(?:in|at|on|from|of|out|toward|towards|by)$/.test(before)) return end;
      return t.sideNouns.has(next) || isPlaceWord(next) || partPhrases.at(words, i + 1) !== undefined
        ? end
        : undefined;
    }
    case 'forward':
    case 'aft':
      return t.sideNouns.has(next) || within ? end : undefined;
    case 'steer':
    case 'steering':
    case 'drive':
      return within || /^(?:tires?|axle|position|outer|inner|duals?|left|right|inside|outside)$/.test(next)
        ? end
        : undefined;
    case 'drives':
    case 'steers':
      return within ||
        ((before === '' || articles.test(before)) &&
          !/^(?:good|nice|fine|straight|great|well|like|real|really|better|smooth|down|right|it|me|you|pretty|the|easy|and)$/.test(
            next,
          ))
        ? end
        : undefined;
    default:
      return end;
  }
}

/** "Left rear out" was said a few words before: an "in" with a number is the other of that pair. */
function pairOpen(words: readonly Word[], i: number): boolean {
  for (let k = i - 1; k > Math.max(1, i - 12); k--)
    if (normAt(words, k) === 'out') return t.ends[normAt(words, k - 1)] === 'rear';
  return false;
}

/** Inner or outer said at `i`. "In" and "out" only between a corner and its number: "left rear out ten". */
function depthAt(words: readonly Word[], i: number, within: boolean, p: PlaceParts): PlaceParts['depth'] {
  const n = normAt(words, i);
  const next = normAt(words, i + 1);
  if (
    n === 'in' &&
    !within &&
    (numberLike.test(next) || /^(?:can't|couldn't|no|same|is|not)$/.test(next)) &&
    joined(words, i)
  )
    return pairOpen(words, i) ? 'inner' : undefined;
  if (n === 'out' || n === 'in')
    return within && p.side && p.end && joined(words, i - 1) && (numberLike.test(next) || !joined(words, i))
      ? n === 'in'
        ? 'inner'
        : 'outer'
      : undefined;
  const depth = t.depths[n];
  if (!depth) return undefined;
  if (within && (p.side || p.end)) return depth;
  const starts = i === 0 || (words[i - 1]?.stop ?? 2) === 2;
  const open = !joined(words, i);
  if (/^(?:inside|outside)$/.test(n)) {
    if (/^(?:one|ones|dual|duals|tire|tyre|tires|wheel|wheels|left|right|rear)$/.test(next) && !open)
      return depth;
    if (
      /^(?:'s|is|are|has|got)$/.test(next) &&
      !open &&
      i > 0 &&
      joined(words, i - 1) &&
      /^(?:the|on)$/.test(normAt(words, i - 1))
    )
      return depth;
    if (next === "'s" && !open) return depth;
    return open && !starts ? depth : undefined;
  }
  return depth;
}

/** The spot with a name at `i`. */
function spotAt(words: readonly Word[], i: number, within: boolean): string | undefined {
  const n = normAt(words, i);
  const spot = t.spots[n];
  if (!spot) return undefined;
  const next = joined(words, i) ? normAt(words, i + 1) : '';
  if (n === 'tag') return within || /^(?:axle|tires?|left|right|wheels?)$/.test(next) ? spot : undefined;
  if (n === 'tags') {
    const before = i > 0 && joined(words, i - 1) ? normAt(words, i - 1) : '';
    return (before === '' || before === 'the') && !/^(?:on|in|from|expired?|current|and)$/.test(next)
      ? spot
      : undefined;
  }
  return !within || spot === 'bedroom' ? spot : undefined;
}

/** The other of two: "the other side", "its mate", "opposite corner". */
function otherAt(words: readonly Word[], i: number): PlaceHit | undefined {
  const n = normAt(words, i);
  if (!joined(words, i)) return undefined;
  const next = normAt(words, i + 1);
  if ((n === 'other' || n === 'opposite' || n === 'far') && next === 'side')
    return { from: i, to: i + 2, other: 'side' };
  if ((n === 'opposite' || n === 'other') && next === 'corner')
    return { from: i, to: i + 2, other: 'corner' };
  if (
    n === 'other' &&
    /^(?:front|rear|back|steer|drive)$/.test(next) &&
    /^(?:the|that)$/.test(normAt(words, i - 1))
  )
    return { from: i, to: i + 2, other: 'side' };
  if (
    n === 'other' &&
    (next === 'one' || next === 'dual' || next === 'tire') &&
    normAt(words, i - 1) !== 'no'
  )
    return { from: i, to: i + 2, other: 'one' };
  if (n === 'its' && next === 'mate') return { from: i, to: i + 2, other: 'one' };
  return undefined;
}

/** "Right, headlamps hazy.": a word to begin with, where nothing is said of a left. */
function isJustRight(words: readonly Word[], i: number): boolean {
  if (normAt(words, i) !== 'right' || (words[i]?.stop ?? 0) === 0) return false;
  if (i > 0 && (words[i - 1]?.stop ?? 0) < 2) return false;
  if (itemAt(words, i + 1)) return false;
  for (let k = i - 16; k < i + 16; k++)
    if (
      k !== i &&
      /^(?:left|lefts|driver|driver's|street|road|right|rights|side|sides|corner|corners|front|rear)$/.test(
        normAt(words, k),
      )
    )
      return false;
  return true;
}

/** The place words that begin at `i`. */
export function placeAt(words: readonly Word[], i: number): PlaceHit | undefined {
  const first = numberedAt(words, i) ?? otherAt(words, i);
  if (first) return first;
  if (isJustRight(words, i)) return undefined;
  const p: { -readonly [K in keyof PlaceParts]: PlaceParts[K] } = {};
  let to = i;
  for (let at = i; at < words.length && at - i < 10; at++) {
    if (at > i && !joined(words, at - 1)) break;
    const n = normAt(words, at);
    const within = to > i;
    const corner = t.corners[n];
    if (corner && !p.side && !p.end) {
      [p.side, p.end] = corner;
      if (corner[2]) p.depth = corner[2];
      to = at + 1;
      continue;
    }
    const near = within && at === to;
    const side = p.side ? undefined : sideAt(words, at, within);
    const end = side || p.end ? undefined : endAt(words, at, within);
    const depth = side || end || p.depth ? undefined : depthAt(words, at, near || within, p);
    const spot = side || end || depth || p.spot ? undefined : spotAt(words, at, within);
    if (side) p.side = side;
    else if (end) p.end = end;
    else if (depth) p.depth = depth;
    else if (spot && (at === i || near || spot === 'tag')) p.spot = spot;
    else if (within && t.fillers.has(n)) continue;
    else break;
    to = at + 1;
  }
  if (to === i) return undefined;
  const next = normAt(words, to);
  const bare = !p.side && !p.depth && !p.spot;
  if (bare && p.end && t.notAfter.has(next) && next !== 'vent' && joined(words, to - 1)) return undefined;
  while (
    to < words.length &&
    joined(words, to - 1) &&
    (normAt(words, to) === 'side' || normAt(words, to) === 'corner' || normAt(words, to) === "'s") &&
    normAt(words, to - 1) !== 'side'
  )
    to++;
  return {
    from: i,
    to,
    ...p,
    ...(to - i === 1 && t.many.has(normAt(words, i)) ? { many: true as const } : {}),
  };
}
