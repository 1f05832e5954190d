// Why: a lamp that never lights can hide an airbag that is gone.
import { practice } from '../../standards/trade-practice/practice.ts';
import { wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const airbagLamp: Rule = {
  id: 'airbag-lamp',
  asks: 'Does the airbag lamp come on and go out?',
  why: 'A lamp that never lights can hide an airbag that is gone.',
  part: 'airbag_srs',
  aspect: 'lamp_off',
  appliesTo: (facts, place) => facts.get('airbag_srs', 'lamp_off', place) !== undefined,
  expectedAt: () => [],
  look: 'Key on: it lights, then goes out.',
  minutes: 1,
  steps: [
    {
      weight: 'danger',
      mustBe: 'none of',
      words: ['missing'],
      cites: [practice('an airbag that is gone is found out before anyone drives')],
    },
    {
      weight: 'defect',
      mustBe: 'none of',
      words: ['no', 'lit', 'fails', 'out'],
      cites: [practice('the lamp proves and goes out')],
    },
    {
      weight: 'defect',
      mustBe: 'one of',
      words: ['yes', 'works', 'good', 'passes', 'sound'],
      cites: [practice('the lamp proves and goes out')],
    },
  ],
  says: {
    meets: 'The lamp came on and went out.',
    fails: 'The lamp does not do what it should.',
    cannotTell: 'What was said does not settle it: key on and watch.',
    notSeen: 'Nobody has watched the airbag lamp.',
  },
  next: 'Scan the airbag module.',
  who: 'shop technician',
  proofs: wordProofs([
    ['yes', 'meets', 'sound'],
    ['works', 'meets', 'sound'],
    ['no', 'fails', 'repair'],
    ['lit', 'fails', 'repair'],
    ['missing', 'fails', 'stop'],
  ]),
};
