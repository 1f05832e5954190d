// Why: "the blue one we had", "my brother-in-law's", "had one last week": another coach, told from article, owner and what follows.
import { phraseList } from './phrase-index.ts';
import type { Word } from './word.ts';

const vehicle =
  /^(?:coach|coaches|rig|rigs|unit|units|trailer|trailers|van|vans|motorhome|motorhomes|bus|buses|camper|campers|truck|trucks|pickup|popup|pop-up|car|hauler|class|wheel|one|ones|toy|machine|pusher|pushers|gasser|gassers|diesel|diesels|rv|rvs|house|'un)$/;
const otherDet = phraseList(
  'another,my own,our own,the other,some other,any other,a different,the last,the next,my last,our last,my first,our first,my old,our old,his old,her old,their old,my other,our other,the previous,every,most,any'.split(
    ',',
  ),
);
const colour =
  /^(?:blue|white|red|green|tan|brown|gray|grey|black|silver|gold|yellow|maroon|big|little|long|short|newer|older|smaller|bigger|monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/;
const away =
  /^(?:over|next|parked|down|across|beside|we|i|he|they|you|already|outside|out|back|sold|from|that|sitting|there)$/;
const gotVerb = /^(?:had|brought|sold|bought|seen|saw|took|traded|owned|did|lost|got|drove)$/;
const afterOne =
  /^(?:last|this|on|that|like|with|in|come|come|where|back|melt|burn|catch|blow|go|split|out|once|years|just|here)$/;

/** Belong to who speaks, not to the coach. */
const ownedThing =
  /^(?:truck|pickup|car|house|home|shop|place|garage|driveway|barn|yard|lot|pick-up|suv|boat|tractor|jeep|minivan|kitchen|office|shed|cabin|rv|bike|apartment|basement)$/;
const ownedPlace = /^(?:garage|kitchen|basement|lot|office|shop|yard|cabin|home|place|rv)$/;

/** "Across the row", "next door", "parked behind us", "in the next stall", "over by the fence". */
function isAwayAt(words: readonly Word[], a: number): boolean {
  const norm = (k: number): string => words[k]?.norm ?? '';
  const joined = (k: number): boolean => words[k - 1]?.stop === 0;
  if (!joined(a)) return false;
  const n = norm(a);
  if (/^(?:parked|sitting|standing|waiting)$/.test(n))
    return /^(?:behind|next|beside|across|over|by|against|out|down|in|outside|there)$/.test(norm(a + 1));
  const spot =
    /^(?:row|aisle|lane|way|street|road|fence|lot|gate|yard|drive|alley|wall|office|stall|bay|space|spot|line|barn|tree|us|it|him|me|ours|this|building|shop)$/;
  if (/^(?:across|behind|beside|past|opposite|down|by|along)$/.test(n))
    return spot.test(norm(a + 1))
      ? /^(?:us|ours|this|me)$/.test(norm(a + 1))
      : /^(?:the|from|to)$/.test(norm(a + 1)) && spot.test(norm(a + 2));
  if (n === 'next') return /^(?:to|door|over)$/.test(norm(a + 1));
  if (n === 'over') return /^(?:there|by|yonder|on|in)$/.test(norm(a + 1));
  return n === 'in' && norm(a + 1) === 'the' && norm(a + 2) === 'next' && spot.test(norm(a + 3));
}

const none = undefined;
/** Another vehicle named at word `i`: how many words that takes. */
export function otherVehicleAt(words: readonly Word[], i: number): { readonly length: number } | undefined {
  const norm = (k: number): string => words[k]?.norm ?? '';
  const joined = (k: number): boolean => words[k - 1]?.stop === 0;
  const n = norm(i);
  const det = otherDet.at(words, i);
  if (det) {
    for (let k = i + det.length; k < i + det.length + 3 && joined(k); k++)
      if (vehicle.test(norm(k))) {
        const noun = norm(k);
        if (noun === 'one' || noun === 'ones' || noun === 'wheel' || noun === 'class')
          return /^(?:one|ones)$/.test(noun) &&
            away.test(norm(k + 1)) &&
            joined(k + 1) &&
            /last|first|old/.test(norm(k - 1))
            ? { length: k + 1 - i }
            : none;
        if (/^(?:every|any|most)$/.test(n) && !/s$|^(?:van|coach|rig|bus|unit|trailer)$/.test(noun))
          return none;
        return { length: k + 1 - i };
      }
    return none;
  }
  // "the other one on the lot", "the truck beside us"
  if (
    (/^(?:the|that|this)$/.test(n) || n === 'other') &&
    ((norm(i + 1) === 'other' && norm(i + 2) === 'one') || (n === 'other' && norm(i + 1) === 'one'))
  ) {
    const k = n === 'other' ? i + 2 : i + 3;
    if (
      /^(?:on|in|out|at)$/.test(norm(k)) &&
      /^(?:the|our)$/.test(norm(k + 1)) &&
      /^(?:lot|yard|shop|row|back|barn)$/.test(norm(k + 2))
    )
      return { length: k + 3 - i };
  }
  // "last rig through here", "last one in": without its article
  if (n === 'last' && (i === 0 || (words[i - 1]?.stop ?? 0) > 0 || /^(?:the|our|my)$/.test(norm(i - 1)))) {
    for (let k = i + 1; k < i + 4 && joined(k); k++)
      if (
        vehicle.test(norm(k)) &&
        joined(k + 1) &&
        /^(?:through|in|we|i|here|that|had|was|they|he|you|to|off|from|out|on|with|like|came)$/.test(
          norm(k + 1),
        )
      )
        return { length: k + 2 - i };
  }
  // "the unit across the row", "the gas one parked behind us", "the coach in the next stall"
  if ((n === 'the' || n === 'that') && !/^(?:of|on|under|behind|for)$/.test(norm(i - 1)))
    for (let k = i + 1; k < i + 4 && (k === i + 1 || joined(k)); k++)
      if (vehicle.test(norm(k)) && !/^(?:wheel|class|toy)$/.test(norm(k)) && joined(k + 1)) {
        let a = k + 1;
        while (/^(?:is|'s|was|that's|that)$/.test(norm(a)) && joined(a + 1)) a++;
        if (isAwayAt(words, a)) return { length: a + 1 - i };
        break;
      }
  // "at my house", "in my pickup", "at our place", "the neighbor's rig"
  if (
    /^(?:my|our|his|her|their)$/.test(n) &&
    /^(?:at|in|on|to|from|than)$/.test(norm(i - 1)) &&
    joined(i + 1)
  )
    for (let k = i + 1; k < i + 4 && (k === i + 1 || joined(k)); k++)
      if (ownedThing.test(norm(k)) && (/^(?:at|from)$/.test(norm(i - 1)) || !ownedPlace.test(norm(k))))
        return { length: k + 1 - i };
  // "in the red coach", "on the gas one": another than this, told by its color or kind
  if (
    /^(?:in|on|from|with|inside|under)$/.test(n) &&
    norm(i + 1) === 'the' &&
    (colour.test(norm(i + 2)) ||
      /^(?:gas|other|next|neighbor's|neighbour's|rental|demo|trade)$/.test(norm(i + 2))) &&
    /^(?:coach|rig|trailer|bus|motorhome|camper|unit|truck|pickup|one)$/.test(norm(i + 3)) &&
    joined(i + 2) &&
    joined(i + 3) &&
    !(norm(i + 3) === 'one' && !/^(?:gas|rental|demo|trade)$/.test(norm(i + 2)))
  )
    return { length: 4 };
  if (
    /^(?:neighbor|neighbour|guy|fella|customer|dealer|fellow|brother|dad|boss|friend|buddy)$/.test(n) &&
    norm(i + 1) === "'s" &&
    vehicle.test(norm(i + 2)) &&
    joined(i + 1) &&
    joined(i + 2)
  )
    return { length: 3 };
  // "that blue one we had", "the white one's already sold"
  if (n === 'the' || n === 'that') {
    if (colour.test(norm(i + 1))) {
      let k = i + 2;
      while (k < i + 4 && !vehicle.test(norm(k)) && joined(k)) k++;
      const noun = norm(k);
      if (vehicle.test(noun) && !/^(?:wheel|class|unit)$/.test(noun) && joined(k)) {
        let a = k + 1;
        while (/^(?:'s|is|was|it)$/.test(norm(a))) a++;
        if (away.test(norm(a))) return { length: a + 1 - i };
      }
    }
    if (norm(i + 1) === 'one' && joined(i + 1) && joined(i + 2)) {
      const a = norm(i + 2);
      const b = norm(i + 3);
      if (/^(?:we|i|they|he|you)$/.test(a) && gotVerb.test(b)) return { length: 4 };
      if (
        n === 'the' &&
        /^(?:next|across|down|beside|behind)$/.test(a) &&
        /^(?:to|door|the|from|it|us)$/.test(b)
      )
        return { length: 4 };
    }
    if (
      /^(?:coach|rig|trailer|van|bus|motorhome|unit|camper)$/.test(norm(i + 1)) &&
      joined(i + 1) &&
      /^(?:next|beside|across|that|we|i)$/.test(norm(i + 2)) &&
      /^(?:stood|sat|was|door|had|sold|came|to|took|did|saw|looked|drove|inspected|checked|bought|traded|owned|lost|worked|tested|rented|got|ran|have)$/.test(
        norm(i + 3),
      ) &&
      norm(i + 2) !== n
    )
      return { length: 4 };
  }
  // "Marcus had one last week", "fella brought one in"
  if (gotVerb.test(n) && norm(i + 1) === 'one' && joined(i + 1)) {
    const subject = norm(i - 1);
    if (
      !/^(?:it|she|this|that|they|which)$/.test(subject) &&
      joined(i) &&
      (afterOne.test(norm(i + 2)) || words[i + 1]?.stop === 2)
    )
      return { length: 2 };
  }
  if (gotVerb.test(n) && /^(?:a|some)$/.test(norm(i + 1)) && /^(?:i|we|he|she)$/.test(norm(i - 1)))
    for (let k = i + 2; k < i + 5; k++)
      if (/^(?:coach|rig|trailer|van|bus|motorhome|camper|popup)$/.test(norm(k)) && joined(k))
        return { length: k + 1 - i };
  // "I had a Larkmoor in here back in the spring"
  if (
    n === 'had' &&
    norm(i + 1) === 'a' &&
    /^(?:i|we)$/.test(norm(i - 1)) &&
    words[i + 2]?.capital &&
    /^(?:in|back|last|once|come|that|here)$/.test(norm(i + 3))
  )
    return { length: 3 };
  if (
    n === 'my' &&
    /^(?:truck|pickup|car|bus|van|rig|coach|trailer|own|old)$/.test(norm(i + 1)) &&
    joined(i + 1)
  )
    return { length: 2 };
  // "next door" is the neighbour; "the next door" is a door
  if (n === 'next' && norm(i + 1) === 'door' && joined(i + 1) && norm(i - 1) !== 'the') return { length: 2 };
  if (n === 'down' && norm(i + 1) === 'the' && norm(i + 2) === 'row') return { length: 3 };
  if (
    (n === 'on' || n === 'in') &&
    norm(i + 1) === 'the' &&
    norm(i + 2) === 'lot' &&
    norm(i - 1) !== 'sitting'
  )
    return none;
  if (
    (n === 'over' &&
      norm(i + 1) === 'by' &&
      norm(i + 2) === 'the' &&
      /^(?:fence|gate|road|office|shop|barn|tree)$/.test(norm(i + 3))) ||
    (n === 'parked' && /^(?:against|next|beside|behind|by)$/.test(norm(i + 1)))
  )
    return { length: 2 };
  // "Anything past fifty milliamps", "every van over five years old"
  if (
    /^(?:anything|anybody|anyone)$/.test(n) &&
    /^(?:past|over|above|under|below|more|less|older|with)$/.test(norm(i + 1))
  )
    return { length: 2 };
  // "on my brother's coach", "at my neighbor's", "for my grill"
  if (
    /^(?:on|in|at|for|to|of|with)$/.test(n) &&
    /^(?:my|our|his|her|their)$/.test(norm(i + 1)) &&
    joined(i + 1)
  ) {
    if (
      /^(?:brother|sister|dad|father|mom|mother|buddy|friend|neighbor|neighbour|uncle|cousin|son|daughter|wife|husband|partner|boss)$/.test(
        norm(i + 2),
      ) &&
      norm(i + 3) === "'s"
    )
      return { length: 4 };
    if (
      /^(?:grill|house|boat|home|garage|shop|lawnmower|mower|barbecue|bbq|smoker|cabin|shed|barn|kitchen|tractor|golf)$/.test(
        norm(i + 2),
      ) &&
      n !== 'in'
    )
      return { length: 3 };
  }
  // "a bad converter will cook the batteries": one of a kind stands for all
  if ((n === 'a' || n === 'an') && (i === 0 || (words[i - 1]?.stop ?? 0) > 1))
    for (let k = i + 2; k < i + 6 && joined(k); k++) {
      if (/^(?:will|'ll|can|could|would|might)$/.test(norm(k))) return { length: k + 1 - i };
      if (/^(?:is|was|has|had|that|on|in|in|and|with|of|at|by|here|where|i|we)$/.test(norm(k))) break;
    }
  // "an absorption unit wants", "a tire don't care": one of a kind stands for all
  if ((n === 'a' || n === 'an') && (i === 0 || (words[i - 1]?.stop ?? 0) > 0))
    for (let k = i + 2; k < i + 5 && joined(k); k++)
      if (/^(?:wants|needs|doesn't|don't|likes|lasts|loses|gets)$/.test(norm(k)))
        return { length: k + 1 - i };
  return none;
}
