// Why: a plain fact becomes a sentence of the listing that says how it is known, and points at any fault that qualifies it.
import { aspectOf } from '../catalogue/index.ts';
import { placeName } from '../catalogue/place.ts';
import type { Finding } from '../judged/finding.ts';
import type { Fact } from '../known/facts.ts';
import type { Observation } from '../said/entry.ts';
import type { Day } from '../units/day.ts';
import { isSameDimension } from '../units/quantity.ts';
import { type Basis, basisOf } from './basis.ts';
import type { Claim, Unpublished } from './document.ts';
import { isFault } from './fault.ts';
import { type ListingLine, listingLines } from './listing-lines.ts';
import { dayWithAge, lastDayOf } from './plain-day.ts';
import { factWords, subjectTitle, subjectWords } from './plain-subject.ts';
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

/** "left front 8/32 in, right front 7/32 in"; where all places say the same, "8/32 in, all six". */
function valuesOf(facts: readonly Fact[]): string {
  const placed = facts[0] === undefined || !onePlaced.has(facts[0].part);
  const said = facts.map((f) => plainValue(f.value, aspectOf(f.part, f.aspect)));
  if (facts.length > 1 && new Set(said).size === 1) return `${said[0]}, all ${facts.length}`;
  return facts
    .map((f, i) => (f.place === undefined || !placed ? said[i] : `${placeName(f.place)} ${said[i]}`))
    .join(', ');
}

/** Who is said to have said it. */
const sayer = (evidence: readonly Observation[]): string | undefined =>
  evidence.find((o) => o.saidBy !== undefined)?.saidBy;

/** The sentence for a value known in a certain way. A guess and hearsay always say that they are. */
function sentence(
  lead: string,
  values: string,
  basis: Basis,
  evidence: readonly Observation[],
  on: Day,
): string {
  const last = lastDayOf(evidence);
  const day = last === undefined ? '' : ` ${dayWithAge(last, on)}`;
  const teller = sayer(evidence);
  switch (basis) {
    case 'measured':
      return `${lead}: ${values} (measured${day}).`;
    case 'seen':
      return `${lead}: ${values} (seen${day}).`;
    case 'label':
      return `${lead}: ${values} (read off a label or paper${day}).`;
    case 'figured':
      return `${lead}: ${values} (worked out from readings; the working is in the report).`;
    case 'told':
      return teller === undefined
        ? `${lead}: ${values}, as said on the walk; not measured, no label read.`
        : `${lead}: ${values}, as told by ${teller}; we have no paper.`;
    default:
      return `${lead}: perhaps ${values}; a guess, not measured.`;
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

/** Each part once: by its place where there are one or two, otherwise with how many places. */
function namedOnce(faults: readonly Finding[]): readonly string[] {
  const places = new Map<string, Set<string>>();
  for (const f of faults) places.set(f.part, (places.get(f.part) ?? new Set()).add(f.place ?? ''));
  return [...places].flatMap(([part, at]) =>
    at.size > 2
      ? [`${subjectWords({ part })}, ${at.size} places`]
      : [...at].map((place) => subjectWords(place === '' ? { part } : { part, place })),
  );
}

/** A number in a unit that does not measure the aspect was misheard: it stays in the report and out of the listing. */
function fits(f: Fact): boolean {
  const unit = aspectOf(f.part, f.aspect)?.unit;
  return f.value.is !== 'quantity' || unit === undefined || isSameDimension(f.value.unit, unit);
}

function claimOf(
  line: ListingLine,
  basis: Basis,
  facts: readonly Fact[],
  faults: readonly Finding[],
  on: Day,
): Claim {
  const evidence = evidenceOf(facts);
  const qualifying = faultsOn(facts, faults);
  const names = namedOnce(qualifying);
  const but =
    names.length === 0
      ? ''
      : ` See the fault${qualifying.length === 1 ? '' : 's'} told above: ${names.join('; ')}.`;
  return {
    id: `${line.section}/${line.part}/${line.aspect}/${basis}`,
    text: sentence(line.lead, valuesOf(facts), basis, evidence, on) + but,
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

/** Sources that disagree are told as such, never as one value. */
function conflictOf(line: ListingLine, fact: Fact): Claim {
  const sides = fact.sides.map((s) => plainValue(s.value, aspectOf(fact.part, fact.aspect)));
  return {
    id: `not-checked/conflict/${fact.part}/${fact.aspect}/${fact.place ?? ''}`,
    text: `${line.lead}${fact.place === undefined ? '' : `, ${placeName(fact.place)}`}: not settled. Our sources disagree: ${sides.join(' against ')}.`,
    section: 'not checked',
    standing: 'backed',
    basis: 'none',
    evidence: evidenceOf([fact]),
    facts: [fact],
    figures: [],
    findings: [],
    published: true,
  };
}

/** Sentences for every fact that the listing's table names, in the table's order; what is in conflict goes to "not checked". */
export function lineClaims(u: Unpublished): readonly Claim[] {
  const faults = u.findings.filter(isFault);
  return listingLines.flatMap((line) => {
    const all = u.facts.all(line.part, line.aspect).filter(fits);
    const groups = new Map<Basis, Fact[]>();
    for (const f of all) {
      const basis = basisOf(f);
      if (basis !== 'none') groups.set(basis, [...(groups.get(basis) ?? []), f]);
    }
    return [
      ...[...groups].map(([basis, facts]) => claimOf(line, basis, facts, faults, u.on)),
      ...all.filter((f) => f.standing === 'conflict').map((f) => conflictOf(line, f)),
    ];
  });
}

/** "Tire, left rear inner: tread mid 2/32 in" for a fact outside the table. */
export const factLine = (fact: Fact): string => `${subjectTitle(fact)}: ${factWords(fact)}`;
