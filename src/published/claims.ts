// Why: the listing as claims: each sentence with how it is known and what stands behind it, in the order a buyer should read them.
import { disclosures } from './disclosures.ts';
import type { Claim, Unpublished } from './document.ts';
import { headline } from './headline.ts';
import { lineClaims } from './line-claims.ts';
import { notChecked } from './not-checked.ts';
import { praise } from './praise.ts';
import { works } from './works.ts';

/** In short with the count of faults, what it is, what works with its readings, every fault, and what nobody checked. */
const order: readonly Claim['section'][] = [
  'headline',
  'money',
  'identity',
  'house',
  'chassis',
  'praise',
  'disclosure',
  'not checked',
];

/** Words taken from speech that no person has looked over yet are counted in the open. */
function unreviewed(u: Unpublished): readonly Claim[] {
  const facts = u.facts.every().filter((f) => f.figure === undefined && f.doubts.includes('not reviewed'));
  if (facts.length === 0) return [];
  return [
    {
      id: 'not-checked/unreviewed',
      section: 'not checked',
      standing: 'backed',
      basis: 'none',
      figures: [],
      findings: [],
      published: true,
      text: `${facts.length === 1 ? 'One reading or remark was' : `${facts.length} readings and remarks were`} taken from the recording and not yet confirmed by a person.`,
      evidence: facts.flatMap((f) => f.evidence.slice(0, 1)),
      facts,
    },
  ];
}

/** Every sentence of the listing and every piece of praise, in reading order. Those with `published` false are for the dealership only. */
export function claims(u: Unpublished): readonly Claim[] {
  const all = [
    ...headline(u),
    ...works(u),
    ...lineClaims(u),
    ...disclosures(u),
    ...notChecked(u),
    ...unreviewed(u),
    ...praise(u),
  ];
  return order.flatMap((section) => all.filter((c) => c.section === section));
}
