// Why: the dipstick is the cheapest look into an engine.
import { practice } from '../../standards/trade-practice/practice.ts';
import { wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const engineOilLevel: Rule = {
  id: 'engine-oil-level',
  asks: 'Is the engine oil at its level and its color?',
  why: 'Milky or empty, it is the engine.',
  part: 'engine_oil',
  aspect: 'level',
  look: 'Cold, level ground; wipe on paper; ask date and miles.',
  minutes: 4,
  steps: [
    {
      weight: 'danger',
      mustBe: 'none of',
      words: ['milky', 'fuel smell', 'empty', 'coolant in oil'],
      cites: [practice('milky oil is coolant; do not run it')],
    },
    {
      weight: 'defect',
      mustBe: 'none of',
      words: ['low', 'a quart low', 'over full', 'overfull', 'gritty', 'overdue'],
      cites: [practice('oil stands between the marks')],
    },
    {
      weight: 'defect',
      mustBe: 'one of',
      words: ['full', 'in range', 'ok', 'good', 'between the marks', 'at full', 'up to full'],
      cites: [practice('oil stands between the marks')],
    },
  ],
  says: {
    meets: 'The oil stood between the marks.',
    fails: 'The oil does not stand as it should.',
    cannotTell: 'What was said of the oil does not settle it: dip it cold.',
    notSeen: 'The oil has not been dipped.',
  },
  next: 'Do not run it if it is milky. Low: fill, find where it goes. Take a sample of a high-value engine.',
  who: 'shop technician',
  caution: 'engine',
  proofs: wordProofs(
    [
      ['full', 'meets', 'sound'],
      ['in range', 'meets', 'sound'],
      ['low', 'fails', 'repair'],
      ['milky', 'fails', 'stop'],
    ],
    true,
  ),
};
