// Why: a plain fact becomes a sentence of the listing that says how it is known, and points at any fault that qualifies it.
import { aspectOf } from '../catalogue/index.ts';
import { placeName } from '../catalogue/place.ts';
import type { Finding } from '../judged/finding.ts';
import type { Fact } from '../known/facts.ts';
import type { Observation } from '../said/entry.ts';
import { convert, isSameDimension } from '../units/quantity.ts';
import { type Basis, basisOf } from './basis.ts';
import type { Claim, Unpublished } from './document.ts';
import { isFault } from './fault.ts';
import { type ListingLine, listingLines } from './listing-lines.ts';
import { dayWithAge, lastDayOf, walkDayOf } from './plain-day.ts';
import { factWords, lowered, partNames, subjectTitle, subjectWords } from './plain-subject.ts';
import { plainValue } from './plain-value.ts';

/** The observations behind facts, each once. */
export function evidenceOf(facts: readonly Fact[]): readonly Observation[] {
  const seen = new Map<string, Observation>();
  for (const f of facts) for (const o of f.evidence) seen.set(o.id, o);
  return [...seen.values()];
}

/** Parts of which there is one, wherever it is read: their place adds nothing for a buyer. */
const onePlaced = new Set([
  'vin_plate',
  'odometer',
  'cert_label',
  'chassis_label',
  'cargo_label',
  'hour_meters',
  'generator',
  'fuel_tank',
]);

/** The value; of a VIN that has not its 17 characters (ISO 3779) it is told that it is not whole. */
function oneValue(f: Fact): string {
  const words = plainValue(f.value, aspectOf(f.part, f.aspect));
  const isPiece =
    f.part === 'vin_plate' && f.aspect === 'vin' && f.value.is === 'text' && words.length !== 17;
  return isPiece ? `${words}, not the whole number (${words.length} of 17 characters)` : words;
}

/** "left front 8/32 in, right front 7/32 in"; where all say the same, "8/32 in (left, right)". */
function valuesOf(facts: readonly Fact[]): string {
  const placed = facts[0] === undefined || !onePlaced.has(facts[0].part);
  const said = facts.map(oneValue);
  if (facts.length > 1 && new Set(said).size === 1) return `${said[0]}${sameAt(facts, placed)}`;
  return facts
    .map((f, i) => (f.place === undefined || !placed ? said[i] : `${placeName(f.place)} ${said[i]}`))
    .join(', ');
}

/** Where the same was read: the places by name, of many their number. Never "all": others may not have been read. */
function sameAt(facts: readonly Fact[], placed: boolean): string {
  const places = facts.flatMap((f) => (f.place === undefined ? [] : [placeName(f.place)]));
  if (!placed || places.length === 0) return '';
  return places.length > 4 ? ` (at ${places.length} places)` : ` (${places.join(', ')})`;
}

/** Who is said to have said it. */
const sayer = (evidence: readonly Observation[]): string | undefined =>
  evidence.find((o) => o.saidBy !== undefined)?.saidBy;

/** The sentence for values known in a certain way. A guess and hearsay always say that they are. A reading of another day names it. */
function sentence(words: string, basis: Basis, evidence: readonly Observation[], u: Unpublished): string {
  const last = lastDayOf(evidence);
  const day = last === undefined || last === walkDayOf(u) ? '' : ` ${dayWithAge(last, u.on)}`;
  const teller = sayer(evidence);
  switch (basis) {
    case 'measured':
      return `${words} (measured${day}).`;
    case 'seen':
      return `${words} (seen${day}).`;
    case 'label':
      return `${words} (off a label or paper${day}).`;
    case 'figured':
      return `${words} (worked out; the working is in the report).`;
    case 'told':
      return teller === undefined
        ? `${words}, as said on the walk; not measured, no label read.`
        : `${words}, as told by ${teller}; we have no paper.`;
    default:
      return `${words}; a guess, not measured.`;
  }
}

/** Faults of the parts that a sentence speaks of: the sentence must not stand as if they were not there. */
function faultsOn(facts: readonly Fact[], faults: readonly Finding[]): readonly Finding[] {
  return faults.filter((g) =>
    facts.some(
      (f) => f.part === g.part && (g.place === undefined || f.place === undefined || f.place === g.place),
    ),
  );
}

/** Each part once: by its place where there is one, otherwise as several. */
function namedOnce(faults: readonly Finding[]): readonly string[] {
  const places = new Map<string, Set<string>>();
  for (const f of faults) places.set(f.part, (places.get(f.part) ?? new Set()).add(f.place ?? ''));
  return [...places].map(([part, at]) => {
    const [place] = at;
    if (at.size > 1) return lowered(partNames(part));
    return subjectWords(place === undefined || place === '' ? { part } : { part, place });
  });
}

/**
 * A number in a unit that does not measure the aspect, or outside what anybody would believe of it, was misheard: it stays in the report and out
 * of the listing.
 */
function fits(f: Fact): boolean {
  const aspect = aspectOf(f.part, f.aspect);
  if (f.value.is !== 'quantity' || aspect?.unit === undefined) return true;
  if (!isSameDimension(f.value.unit, aspect.unit)) return false;
  const value = convert(f.value.value, f.value.unit, aspect.unit);
  return aspect.within === undefined || (value >= aspect.within[0] && value <= aspect.within[1]);
}

/** One thing told: its line, and the facts of it that are known in the same way. */
interface Told {
  readonly line: ListingLine;
  readonly facts: readonly Fact[];
}

/** What is told of one head, known in one way, is one sentence. */
function claimOf(
  all: readonly [Told, ...Told[]],
  basis: Basis,
  faults: readonly Finding[],
  u: Unpublished,
): Claim {
  const [{ line }] = all;
  const facts = all.flatMap((t) => t.facts);
  const evidence = evidenceOf(facts);
  const qualifying = faultsOn(facts, faults);
  const names = namedOnce(qualifying);
  const but = names.length === 0 ? '' : ` See what is wrong: ${names.join('; ')}.`;
  const perhaps = basis === 'guessed' ? 'perhaps ' : '';
  const words =
    all.length === 1
      ? `${line.lead}: ${perhaps}${valuesOf(facts)}`
      : `${line.head}: ${perhaps}${all.map((t) => `${within(t.line)}${valuesOf(t.facts)}`).join('; ')}`;
  return {
    id: `${line.section}/${line.part}/${line.aspect}/${basis}`,
    text: sentence(words, basis, evidence, u) + but,
    section: line.section,
    standing: 'backed',
    basis,
    evidence,
    facts,
    figures: [...new Set(facts.flatMap((f) => (f.figure === undefined ? [] : [f.figure])))],
    findings: qualifying.map((g) => g.id),
    published: true,
  };
}

/** A lead behind its head: the head is not said twice. "Tires: ... date codes ...". */
function within({ head, lead }: ListingLine): string {
  const first = head.replace(/s$/, '').split(' ')[0] ?? head;
  const rest = lead.startsWith(`${first} `) ? lead.slice(first.length + 1) : lead;
  return lead === head ? '' : `${lowered(rest)} `;
}

/** Sources that disagree are told as such, never as one value. */
function conflictsOf(
  found: readonly { readonly line: ListingLine; readonly fact: Fact }[],
): readonly Claim[] {
  if (found.length === 0) return [];
  const facts = found.map((c) => c.fact);
  const words = found.map(({ line, fact }) => {
    const sides = fact.sides.map((s) => plainValue(s.value, aspectOf(fact.part, fact.aspect)));
    return `${lowered(line.lead)}${fact.place === undefined ? '' : `, ${placeName(fact.place)}`} ${sides.join(' against ')}`;
  });
  return [
    {
      id: 'not-checked/conflicts',
      text: `Not settled, our sources disagree: ${words.join('; ')}.`,
      section: 'not checked',
      standing: 'backed',
      basis: 'none',
      evidence: evidenceOf(facts),
      facts,
      figures: [],
      findings: [],
      published: true,
    },
  ];
}

/** Sentences for every fact that the listing's table names, in the table's order; what is in conflict goes to "not checked". */
export function lineClaims(u: Unpublished): readonly Claim[] {
  const faults = u.findings.filter(isFault);
  const groups = new Map<string, [Basis, [Told, ...Told[]]]>();
  const conflicts: { readonly line: ListingLine; readonly fact: Fact }[] = [];
  for (const line of listingLines) {
    const all = u.facts.all(line.part, line.aspect).filter(fits);
    const byBasis = new Map<Basis, Fact[]>();
    for (const fact of all) {
      const basis = basisOf(fact);
      if (fact.standing === 'conflict') conflicts.push({ line, fact });
      else if (basis !== 'none') byBasis.set(basis, [...(byBasis.get(basis) ?? []), fact]);
    }
    for (const [basis, facts] of byBasis) {
      // Hearsay names its teller, so it is not told in one breath with what others said.
      const teller = basis === 'told' ? (sayer(evidenceOf(facts)) ?? '') : '';
      const key = [line.section, line.head, basis, teller].join('|');
      const group = groups.get(key);
      if (group === undefined) groups.set(key, [basis, [{ line, facts }]]);
      else group[1].push({ line, facts });
    }
  }
  return [
    ...[...groups.values()].map(([basis, all]) => claimOf(all, basis, faults, u)),
    ...conflictsOf(conflicts),
  ];
}

/** "Tire, left rear inner: tread mid 2/32 in" for a fact outside the table. */
export const factLine = (fact: Fact): string => `${subjectTitle(fact)}: ${factWords(fact)}`;
