// Why: the same fault at several places is one thing to read and one thing to mend; every document tells it once.

import { aspectOf } from '../catalogue/index.ts';
import { placeName } from '../catalogue/place.ts';
import type { Finding } from '../judged/finding.ts';
import type { Value } from '../said/entry.ts';
import { plainNear } from './plain-near.ts';
import { againstWords, rangeWords, readingWords } from './plain-reading.ts';
import { badStateWords } from './plain-state.ts';
import { factWords, lowered, partNames, subjectTitle } from './plain-subject.ts';
import { plainValue } from './plain-value.ts';

/** Findings told together: never empty, worst first. */
export type Together = readonly [Finding, ...Finding[]];

/** A finding made of what was seen, without a rule's number or question. */
export const isSight = (f: Finding): boolean => f.rule.startsWith('seen-');

/** The same rule's answer at several places; of what was only seen, everything of one part that is equally bad. Order is kept. */
export function together(findings: readonly Finding[]): readonly Together[] {
  const groups = new Map<string, [Finding, ...Finding[]]>();
  for (const f of findings) {
    const key = (
      isSight(f)
        ? ['seen', f.part, f.verdict, f.outcome]
        : [f.rule, f.part, f.verdict, f.outcome, f.reason, f.place === undefined ? f.id : '']
    ).join('|');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [f]);
    else group.push(f);
  }
  return [...groups.values()];
}

const placesOf = (group: Together): readonly string[] => [...new Set(group.map((f) => f.place ?? ''))];

/** "left front, left rear outer and right front". */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** "Tire, left front", "Tires, left front and right front", "Tires, 5 places". */
export function groupTitle(group: Together, everyPlace = false): string {
  const places = placesOf(group);
  const [first] = group;
  if (places.length === 1) return subjectTitle(first);
  if (isSight(first)) return partNames(first.part);
  const names = places.map(placeName);
  if (names.length <= 2) return `${partNames(first.part)}, ${listed(names)}`;
  return `${partNames(first.part)}, ${names.length} places${everyPlace ? ` (${names.join(', ')})` : ''}`;
}

/** "loose"; "perhaps torn, a guess until somebody looks again"; "sources disagree: works, does not work". */
function sightWords(f: Finding): string {
  const { fact } = f;
  if (fact === undefined) return lowered(f.reason).replace(/\.$/, '');
  if (fact.standing === 'conflict')
    return `sources disagree: ${fact.sides.map((s) => factWords({ ...fact, value: s.value })).join(', ')}`;
  const words =
    fact.value.is === 'state' ? badStateWords(f.part, f.aspect, fact.value.state) : factWords(fact);
  if (f.outcome === 'fails') return words;
  return fact.doubts.includes('hearsay')
    ? `${words}, as told; not seen by us`
    : `perhaps ${words}, a guess until somebody looks again`;
}

function sights(group: Together): string {
  const places = placesOf(group);
  if (places.length === 1) return [...new Set(group.map(sightWords))].join('; ');
  return places
    .map((place) => {
      const here = [...new Set(group.filter((f) => (f.place ?? '') === place).map(sightWords))].join(', ');
      return place === '' ? here : `${placeName(place)} ${here}`;
    })
    .join('; ');
}

const plainAnswers = new Set(['yes', 'no', 'fails', 'works']);

/** The readings of a group: one range, or each place with its own. Empty where there is none, or where the reason has said it. */
export function readingsOf(group: Together): string {
  const known = group.filter(
    (f) => f.fact !== undefined && f.fact.standing === 'known' && f.fact.value.is !== 'unknown',
  );
  if (known.length === 0) return '';
  if (
    known.every(
      (f) => f.limit === undefined && f.reason.toLowerCase().includes(readingWords(f).toLowerCase()),
    )
  )
    return '';
  // "A protected outlet does not trip" needs no "does not work" behind it.
  const isBare = (f: Finding): boolean =>
    f.limit === undefined &&
    f.fact?.value.is === 'state' &&
    plainAnswers.has(f.fact.value.state) &&
    f.fact.doubts.every((d) => d === 'not reviewed');
  if (known.every(isBare)) return '';
  const range = known.length > 1 ? rangeWords(known) : undefined;
  return (
    range ??
    known
      .map(
        (f) =>
          `${group.length > 1 && f.place !== undefined ? `${placeName(f.place)} ` : ''}${readingWords(f)}`,
      )
      .join('; ')
  );
}

/** The limits that decided, each once: "against at most 7 years (trade practice)". */
export const limitsOf = (group: Together): string =>
  [...new Set(group.flatMap((f) => (f.limit === undefined ? [] : [againstWords(f.limit)])))].join('; ');

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The same with whose limit it is in two words, where there is room for no more: the report has the source. */
export const briefly = (words: string): string =>
  words
    .replace(/\((law|standard), used here as a benchmark:.*?\)+(?=;|$)/g, '($1, as a benchmark)')
    .replace(/\(the maker's own limit:.*?\)+(?=;|$)/g, "(the maker's limit)")
    .replace(/\(our own house limit:.*?\)+(?=;|$)/g, '(our own limit)');

/** The sides of a conflict as words: "12 % against 24 %". */
const sidesWords = (f: Finding): string =>
  f.fact === undefined ? '' : f.fact.sides.map((s) => plainSide(f, s.value)).join(' against ');
const plainSide = (f: Finding, value: Value): string => plainValue(value, aspectOf(f.part, f.aspect));

/**
 * Why it is judged so, in the rule's words; where it cannot be told because of who said it or how, that. A rule does not know why a reading is
 * doubtful, only that it is.
 */
export function reasonOf(f: Finding): string {
  const { fact } = f;
  // The subject stands before it: it is not named twice.
  const reason = capital(f.reason.replace(/^The [a-z]+( [a-z]+)?: /, ''));
  if (f.outcome !== 'cannot tell' || fact === undefined) return reason;
  if (fact.standing === 'conflict') return `${reason} Our sources disagree: ${sidesWords(f)}.`;
  const near = plainNear(f);
  if (fact.value.is !== 'quantity' || !/(to spare|its limit)$/.test(near) || near.startsWith('at '))
    return reason;
  if (fact.doubts.includes('hearsay')) return 'It was only told, not read by us: read it.';
  if (fact.doubts.includes('unsure')) return 'It was not surely heard or read: read it again.';
  return reason;
}

/** What is wrong in a few words, without the subject: "7.5 to 7.6 years old, against at most 7 years (trade practice)", "loose". */
export function groupWords(group: Together): string {
  const [first] = group;
  if (isSight(first)) return sights(group);
  const readings = first.limit === undefined ? '' : readingsOf(group);
  if (readings === '') return lowered(reasonOf(first)).replace(/\.$/, '');
  return `${readings}, ${first.outcome === 'fails' ? '' : 'not settled '}${limitsOf(group)}`;
}
