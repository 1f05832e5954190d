// Why: some recognisers write no full stops or commas; where a clause ends must then be told from the words that begin the next.
import { defectPhrases, goodPhrases, partPhrases, stationPhrases, weakParts } from './lexicon.ts';
import { itemAt } from './number-item.ts';
import { numberAt } from './number-span.ts';
import { placeAt } from './place-at.ts';
import type { Stop, Word } from './word.ts';

/** With fewer stops than one in this many words a transcript is held to have none. */
const sparse = 22;
const opens = new Set(
  "it they there i we he she that's this these those no nothing okay ok alright now next so but then and everything both all one not".split(
    ' ',
  ),
);
/** After these a clause goes on, whatever follows. */
const goesOn = new Set(
  "and or but if when because that what how where who which while as than until unless so the a an my your his her its our their this these those of on in at to for with by from into over under behind beside along against across above below twixt betwixt toward towards near around between about like says said say saying think know guess hope see saw is are was were be been 's 're not no isn't aren't wasn't don't doesn't didn't won't can't have has had got get gets put do does did will would could should can may might must very really just only also more most some any each every other another maybe both all one both i we he she it they you there let did".split(
    ' ',
  ),
);
const heads = new Set('the a an this that my your his her our another other both all one'.split(' '));
const firm = new Set('okay ok alright now next'.split(' '));

/** True where a part is named by a word that can begin what is said of it. */
const namesPart = (words: readonly Word[], i: number): boolean => {
  const hit = partPhrases.at(words, i);
  if (!hit) return false;
  const said = words
    .slice(i, i + hit.length)
    .map((w) => w.norm)
    .join(' ');
  return !weakParts.has(said) && !weakParts.has(said.replace(/s$/, ''));
};

/** The stop that belongs before word `i` of a stream without stops. */
function stopBefore(words: readonly Word[], i: number, numberEnd: number): Stop {
  const w = words[i] as Word;
  const before = words[i - 1];
  if (!before) return 0;
  if (w.pause >= 0.8) return 2;
  const n = w.norm;
  if (firm.has(n) && !goesOn.has(before.norm) && !(n === 'now' && before.norm === 'right')) return 2;
  if (goesOn.has(before.norm) && numberEnd !== i) return 0;
  if (w.pause >= 0.35) return 1;
  // "the", "left rear" and the like are looked through to the part they lead to
  let k = i;
  if (heads.has(words[k]?.norm ?? '')) k++;
  const place = placeAt(words, k);
  if (place) k = place.to;
  if (stationPhrases.at(words, i) && namesPart(words, i)) return 2;
  const done = numberEnd === i || endsSaying(words, i);
  if (namesPart(words, k) && (done || k > i)) return 2;
  if (place && place.from === i && numberEnd === i) return 1;
  if (opens.has(n)) {
    if (n === 'and' || n === 'one' || n === 'all' || n === 'both' || n === 'not')
      return done && !itemAt(words, i + 1) && n !== 'one' ? 1 : 0;
    return 1;
  }
  if (numberEnd === i && itemAt(words, i)) return 1;
  if (done && defectPhrases.at(words, i) === undefined && namesPart(words, i)) return 2;
  return 0;
}

/** True when a word of good or bad order ends right before `i`. */
function endsSaying(words: readonly Word[], i: number): boolean {
  for (let length = 1; length <= 3; length++) {
    const at = i - length;
    if (at < 0) break;
    if (defectPhrases.at(words, at)?.length === length || goodPhrases.at(words, at)?.length === length)
      return true;
  }
  return /^(?:works?|working|worked|fine|good|on|off|down|up|in|out|open|closed|it|them|there|too|yet|now|here|one)$/.test(
    words[i - 1]?.norm ?? '',
  );
}

/** True where a number stands with a place right behind it. */
function isNumberPlace(words: readonly Word[], i: number): boolean {
  const span = numberAt(words, i);
  return span !== undefined && placeAt(words, span.to) !== undefined;
}

/** The stream with stops where clauses end, if it came with hardly any; otherwise as it was. */
export function restoreStops(words: readonly Word[]): readonly Word[] {
  const stops = words.reduce((n, w) => n + (w.stop > 0 ? 1 : 0), 0);
  if (words.length < 12 || stops * sparse > words.length) return words;
  const out = words.slice();
  let numberEnd = -1;
  let numberFrom = -1;
  let placeEnd = -99;
  let behind = -1;
  for (let i = 0; i < out.length; i++) {
    const place = i >= placeEnd ? placeAt(out, i) : undefined;
    // "forty pounds left front thirty-eight left rear": each place belongs to the number before it
    const follows =
      place !== undefined && numberEnd === i && numberFrom - placeEnd > 9 && isNumberPlace(out, place.to);
    const chained = place !== undefined && numberEnd === i && behind === numberFrom;
    const stop = follows || chained ? 0 : i === behind ? 1 : stopBefore(out, i, numberEnd);
    if (follows || chained) behind = place.to;
    else if (place) placeEnd = place.to;
    const before = out[i - 1];
    if (before && stop > before.stop) out[i - 1] = { ...before, stop };
    if (i >= numberEnd) {
      const span = numberAt(out, i);
      // two whole numbers said side by side are two readings once the first has its unit
      if (span) {
        numberEnd = span.unit || span.items.length > 1 || span.bare - span.from > 1 ? span.to : -1;
        numberFrom = i;
      }
    }
  }
  return out;
}
