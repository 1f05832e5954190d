// Why: measured, seen, read off a label, worked out, told and guessed are told apart in every document.
import { aspectOf } from '../catalogue/index.ts';
import type { Fact } from '../known/facts.ts';
import type { Observation } from '../said/entry.ts';
import { type Dimension, unitFact } from '../units/unit.ts';
import type { Claim } from './document.ts';

export type Basis = Claim['basis'];

/** Dimensions that nobody knows without an instrument: a number in one of these is a reading. */
const read: ReadonlySet<Dimension> = new Set<Dimension>([
  'pressure',
  'temperature',
  'temperature-difference',
  'voltage',
  'frequency',
  'pressure-rate',
  'sound',
  'acceleration',
  'flow',
  'resistance',
]);

/** Readings whose dimension is also that of a rating: a tread depth is gauged, a length may be out of a brochure. */
const gauged = /tread|moisture|gap|stroke|play|height_diff|drop|crack|reading|hours|gauge|delaminat|bubble/;

const labelParts = new Set([
  'vin_plate',
  'cert_label',
  'chassis_label',
  'cargo_label',
  'title_doc',
  'recall_status',
  'records_folder',
]);
const labelWords = /\b(label|plate|sticker|placard|stamped|title|invoice|receipt|ticket|sidewall)\b/i;
const toolWords =
  /\b(gauge|gauged|meter|metered|measured|tape|tape measure|thermometer|manometer|scale|caliper)\b/i;

const wordsOf = (o: Observation): string =>
  `${o.source.from === 'speech' ? o.source.words : ''} ${'note' in o.source ? (o.source.note ?? '') : ''} ${o.note ?? ''}`;

/** How one observation knows it. */
function basisOfOne(o: Observation): Basis {
  if (o.saidBy !== undefined) return 'told';
  if (o.hedged || o.sure < 0.6) return 'guessed';
  if (o.source.from === 'instrument') return 'measured';
  if (o.source.from === 'document' || labelParts.has(o.part) || labelWords.test(wordsOf(o))) return 'label';
  if (toolWords.test(wordsOf(o))) return 'measured';
  if (o.value.is !== 'quantity') return 'seen';
  if (read.has(unitFact(o.value.unit).dimension) || gauged.test(o.aspect)) return 'measured';
  if (o.source.from === 'photo') return 'seen';
  // Whoever types a plus-or-minus beside a number had something to measure with.
  if (o.source.from === 'typed' && o.value.plusOrMinus !== undefined) return 'measured';
  // A length, a rating or a capacity that was only spoken or typed: somebody said so, nothing shows where from.
  return aspectOf(o.part, o.aspect)?.kind === 'quantity' ? 'told' : 'seen';
}

const rank: readonly Basis[] = ['measured', 'label', 'seen', 'figured', 'told', 'guessed', 'none'];

/**
 * How a fact is known. Doubts outrank everything: a hedged or unsure value is a guess and hearsay is told, however it was kept. Otherwise the
 * best of the observations that agree on the fact's value decides.
 */
export function basisOf(fact: Fact): Basis {
  if (fact.standing !== 'known' || fact.value.is === 'unknown') return 'none';
  if (fact.doubts.includes('hearsay')) return 'told';
  if (fact.doubts.includes('hedged') || fact.doubts.includes('unsure')) return 'guessed';
  if (fact.figure !== undefined) return 'figured';
  if (fact.doubts.includes('on paper only')) return 'label';
  const agreeing = fact.sides[0]?.evidence ?? fact.evidence;
  const found = agreeing.map(basisOfOne);
  return rank.find((b) => found.includes(b)) ?? 'none';
}

/** The least sure of several. */
export const weakest = (all: readonly Basis[]): Basis =>
  all.reduce<Basis>((a, b) => (rank.indexOf(b) > rank.indexOf(a) ? b : a), 'measured');
