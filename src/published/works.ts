// Why: what works is worth as much to a buyer as what does not; it is told in two sentences, and only of what was tried or looked at.

import { placeName } from '../catalogue/place.ts';
import { type Polarity, states } from '../catalogue/state.ts';
import type { Fact } from '../known/facts.ts';
import { basisOf, weakest } from './basis.ts';
import type { Claim, Unpublished } from './document.ts';
import { isFault } from './fault.ts';
import { evidenceOf } from './line-claims.ts';
import { lowered, partName } from './plain-subject.ts';

const plain = new Set(['measured', 'seen']);

/** Known at first hand to work, and nothing wrong with that part at that place. */
function isWorking(f: Fact, faulty: ReadonlySet<string>): boolean {
  if (f.aspect !== 'operates' || f.value.is !== 'state' || !plain.has(basisOf(f))) return false;
  const polarity = (states as Readonly<Record<string, Polarity>>)[f.value.state];
  return (f.value.state === 'yes' || polarity === 'good') && !faulty.has(f.part);
}

/** "slide-out (curb front, rear)". */
function named(part: string, facts: readonly Fact[]): string {
  const places = facts.flatMap((f) => (f.place === undefined ? [] : [placeName(f.place)]));
  return `${lowered(partName(part))}${places.length === 0 ? '' : ` (${places.join(', ')})`}`;
}

const base = { section: 'house', standing: 'backed', figures: [], published: true } as const;

function worked(u: Unpublished, faulty: ReadonlySet<string>): readonly Claim[] {
  const facts = u.facts.every().filter((f) => isWorking(f, faulty));
  if (facts.length === 0) return [];
  const byPart = new Map<string, Fact[]>();
  for (const f of facts) byPart.set(f.part, [...(byPart.get(f.part) ?? []), f]);
  return [
    {
      ...base,
      id: 'house/works',
      text: `Worked when tried on the walk: ${[...byPart].map(([part, all]) => named(part, all)).join('; ')}.`,
      basis: weakest(facts.map(basisOf)),
      evidence: evidenceOf(facts),
      facts,
      findings: [],
    },
  ];
}

/** Sights that met their rule, in the rule's own words: what was looked for and not found, each once. */
function lookedFor(u: Unpublished, faulty: ReadonlySet<string>): readonly Claim[] {
  const met = u.findings.filter(
    (f) =>
      f.verdict === 'sound' &&
      f.outcome === 'meets' &&
      f.limit === undefined &&
      f.aspect !== 'operates' &&
      // The sentence before has said it.
      !/did (its|their) work when tried/.test(f.reason) &&
      f.fact !== undefined &&
      f.fact.value.is === 'state' &&
      plain.has(basisOf(f.fact)) &&
      !faulty.has(f.part),
  );
  const facts = met.flatMap((f) => (f.fact === undefined ? [] : [f.fact]));
  if (facts.length === 0) return [];
  return [
    {
      ...base,
      id: 'house/looked-for',
      text: `Looked for: ${[...new Set(met.map((f) => lowered(f.reason).replace(/\.$/, '')))].join('; ')}.`,
      basis: weakest(facts.map(basisOf)),
      evidence: evidenceOf(facts),
      facts,
      findings: met.map((f) => f.id),
    },
  ];
}

/** What was tried and worked, and what was looked for and not found. A part with a fault is in neither. */
export function works(u: Unpublished): readonly Claim[] {
  const faulty = new Set(u.findings.filter(isFault).map((f) => f.part));
  return [...worked(u, faulty), ...lookedFor(u, faulty)];
}
