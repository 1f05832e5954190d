// Why: "left rear inner tire" and "Tire, left rear inner" are the same thing, worded once for every document.
import { aspectOf } from '../catalogue/index.ts';
import { isPlace, placeName } from '../catalogue/place.ts';
import type { Fact } from '../known/facts.ts';
import { partName, partNames } from './plain-name.ts';
import { plainValue } from './plain-value.ts';

export { partName, partNames };

type Whose = { readonly part: string; readonly place?: string | undefined };

const bare = (id: string): string => id.replaceAll(/[_.-]/g, ' ');

/** The aspect's name as words. */
export const aspectName = (part: string, aspect: string): string =>
  aspectOf(part, aspect)?.name ?? bare(aspect);

/** "Tire, left rear inner": for the head of a line. */
export const subjectTitle = ({ part, place }: Whose): string =>
  place === undefined ? partName(part) : `${partName(part)}, ${placeName(place)}`;

/** The name within a sentence: its first letter small, unless it is an abbreviation. */
export const lowered = (name: string): string =>
  /^[A-Z]([a-z]| )/.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;

/** "left rear inner tire": within a sentence. A place that is no place of the unit but one of several things stands behind: "house batteries, battery two". */
export function subjectWords({ part, place }: Whose): string {
  const name = lowered(partName(part));
  if (place === undefined || name.startsWith(placeName(place))) return name;
  return isPlace(place) || /left|right|front|rear|curb|road/.test(place)
    ? `${placeName(place)} ${name}`
    : `${name}, ${placeName(place)}`;
}

/** Aspects whose states say it all: "leaking", not "leak leaking". */
const ownWord = new Set([
  'condition',
  'crack',
  'leak',
  'damage',
  'rust',
  'stain',
  'noise',
  'smell',
  'soft',
  'wear',
  'present',
  'operates',
]);
const answers = new Set(['yes', 'no']);

/** "tread mid 2/32 in", "works", "no crack": what a fact says of its part, without naming it. */
export function factWords(fact: Pick<Fact, 'part' | 'aspect' | 'value'>): string {
  const aspect = aspectOf(fact.part, fact.aspect);
  const name = aspectName(fact.part, fact.aspect);
  const value = plainValue(fact.value, aspect);
  if (fact.aspect === 'operates' && fact.value.is === 'state') return value;
  if (
    fact.value.is === 'state' &&
    !answers.has(fact.value.state) &&
    (ownWord.has(fact.aspect) || name === value)
  )
    return value;
  if (fact.value.is === 'state' && aspect?.kind === 'yes-no') {
    if (fact.value.state === 'yes') return aspect.good === 'no' ? `${name} seen` : name;
    if (fact.value.state === 'no') return aspect.good === 'yes' ? `${name}: no` : `no ${name}`;
  }
  return fact.aspect === 'condition' ? value : `${name} ${value}`;
}
