// Why: a refrigerator that does not run on gas is half a refrigerator.
import { practice } from '../../standards/trade-practice/practice.ts';
import { wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const fridgeOnGas: Rule = {
  id: 'fridge-on-gas',
  asks: 'Does the refrigerator run on gas?',
  why: 'Owners buy it to run where there is no plug.',
  part: 'refrigerator',
  aspect: 'mode_LP',
  appliesTo: (facts, place) => facts.get('refrigerator', 'mode_LP', place) !== undefined,
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
    meets: 'It ran on gas.',
    fails: 'It does not run on gas.',
    cannotTell: 'What was said does not settle it: give it twelve hours.',
    notSeen: 'Nobody has run it on gas.',
  },
  next: 'Igniter, burner or element; then the cooling unit.',
  who: 'certified RV technician',
  caution: 'lp-gas',
  proofs: wordProofs([
    ['yes', 'meets', 'sound'],
    ['works', 'meets', 'sound'],
    ['no', 'fails', 'repair'],
    ['fails', 'fails', 'repair'],
    ['weak', 'fails', 'watch'],
  ]),
};
