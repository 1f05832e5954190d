// Why: what somebody else said is told from a verb of saying and who does it; a label or a gauge that "says" is no hearsay.

import { isKnownWord } from './lexicon.ts';
import { hearsay } from './trigger-words.ts';
import type { Word } from './word.ts';

const saying =
  /^(?:says?|said|told|tell|tells|claims?|claimed|swears?|swore|thinks|thought|reckons?|reckoned|figures|believes?|believed|mentions?|mentioned|promised|promises|insists?|insisted|assures?|assured|states|stated|reports|reported|explained|recalls|recalled|remembers|remembered|informs|informed|advised|maintains|admits|admitted)$/;
/** Things that speak: what they say was read off. */
const reads =
  /^(?:tag|label|sticker|plate|placard|gauge|meter|screen|display|panel|dash|book|manual|sheet|card|paper|paperwork|receipt|tape|light|monitor|app|tester|tool|sign|decal|stamp|title|log|printout|report|it|this|that|one|side|which|invoice|tire|door|cover|collar|case|i|we|you|like|sidewall|thing|number|record|computer|odometer|thermometer|analyzer|scanner)s?$/;
const people =
  /^(?:seller|owner|guy|wife|husband|widower|granddaughter|grandson|dad|mom|niece|landlord|trader|vendor|bloke|chap|dealer|desk|office|shop|lady|man|woman|mechanic|tech|technician|neighbor|boss|kid|son|daughter|dad|buddy|friend|broker|consignor|salesman|manager|service|family|widow|estate|driver|folks|fellow|gentleman|brother|father|mother|uncle|cousin|nephew)$/;
const who: Readonly<Record<string, string>> = {
  owner: 'the owner',
  owners: 'the owner',
  customer: 'the customer',
  he: 'the seller',
  she: 'the seller',
  they: 'the seller',
  seller: 'the seller',
  guy: 'the seller',
  feller: 'the seller',
  fella: 'the seller',
  husband: 'the seller',
  wife: 'the seller',
};

/** Hearsay that begins at word `i`: by whom, and how many words introduce it. */
export function hearsayAt(
  words: readonly Word[],
  i: number,
): { readonly length: number; readonly by: string } | undefined {
  const told = hearsay.at(words, i);
  if (told) return { length: told.length, by: told.values[0] ?? 'somebody' };
  const w = words[i];
  // "the lady that traded it swears": the verb stands apart from who said it
  if (/^(?:swears|swore|claims|claimed|insists|insisted)$/.test(w?.norm ?? '') && w?.stop === 0)
    for (let k = i - 2; k > i - 8 && k >= 0 && words[k]?.stop === 0; k--)
      if (
        /^(?:that|who)$/.test(words[k]?.norm ?? '') &&
        (people.test(words[k - 1]?.norm ?? '') || Object.hasOwn(who, words[k - 1]?.norm ?? ''))
      )
        return { length: 1, by: 'the seller' };
  const verb = words[i + 1]?.norm ?? '';
  if (w?.stop !== 0 || !saying.test(verb) || reads.test(w.norm)) return undefined;
  if (!/^[a-z]{2,}$/.test(w.norm)) return undefined;
  const direct = /^(?:told|tells?|assures?|assured|promised|informed|informs|advised)$/.test(verb);
  const length = direct && /^(?:me|us)$/.test(words[i + 2]?.norm ?? '') ? 3 : 2;
  const known = Object.hasOwn(who, w.norm) ? who[w.norm] : undefined;
  if (known) return { length, by: known };
  // "Desk says", "the dealer claims", "Kenny thinks": somebody named by calling, or a name
  const person =
    people.test(w.norm) || (w.capital && !isKnownWord(w.norm) && !reads.test(w.norm) && w.norm.length > 2);
  return person &&
    /^(?:says|said|told|tells|claims|claimed|swears|swore|thinks|reckons|reckoned|mentioned|mentions|states|stated|insists|insisted|assures|assured|promised|promises|recalls|remembers|figures|admitted|admits|informed|believes|believed)$/.test(
      verb,
    )
    ? { length, by: 'somebody' }
    : undefined;
}
