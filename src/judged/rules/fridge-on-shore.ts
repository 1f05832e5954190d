// Why: a refrigerator that does not run on shore power is half a refrigerator.
import { practice } from '../../standards/trade-practice/practice.ts';
import { wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const fridgeOnShore: Rule = {
  id: 'fridge-on-shore',
  asks: 'Does the refrigerator run on shore power?',
  why: 'It is how the coach is shown.',
  part: 'refrigerator',
  aspect: 'mode_AC',
  appliesTo: (facts, place) => facts.get('refrigerator', 'mode_AC', place) !== undefined,
  expectedAt: () => [],
  look: 'Twelve hours on that source, then the box.',
  minutes: 3,
  steps: [
    {
      weight: 'defect',
      mustBe: 'none of',
      words: ['no', 'fails', 'broken', 'out', 'absent', 'missing', 'stuck'],
      cites: [practice('it runs on each source it was made for')],
    },
    {
      weight: 'wear',
      mustBe: 'none of',
      words: ['weak', 'intermittent', 'slow', 'poor'],
      cites: [practice('it runs on each source it was made for')],
    },
    {
      weight: 'wear',
      mustBe: 'one of',
      words: ['yes', 'works', 'good', 'cold', 'holds', 'passes'],
      cites: [practice('it runs on each source it was made for')],
    },
  ],
  says: {
    meets: 'It ran on shore power.',
    fails: 'It does not run on shore power.',
    cannotTell: 'What was said does not settle it: give it twelve hours.',
    notSeen: 'Nobody has run it on shore power.',
  },
  next: 'Igniter, burner or element; then the cooling unit.',
  who: 'certified RV technician',
  caution: 'ammonia',
  proofs: wordProofs([
    ['yes', 'meets', 'sound'],
    ['works', 'meets', 'sound'],
    ['no', 'fails', 'repair'],
    ['fails', 'fails', 'repair'],
    ['weak', 'fails', 'watch'],
  ]),
};
