// Why: volts at rest mean one thing of lead and another of lithium.
import { practice } from '../../standards/trade-practice/practice.ts';
import { wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const houseBatteryChemistry: Rule = {
  id: 'house-battery-chemistry',
  asks: 'What kind of house batteries are they?',
  why: 'Without the kind, no volts can be judged and no charger can be set.',
  part: 'house_battery',
  aspect: 'chemistry',
  look: 'Read the label on the battery.',
  minutes: 1,
  steps: [
    {
      weight: 'defect',
      mustBe: 'one of',
      words: ['flooded', 'agm', 'gel', 'lithium iron phosphate'],
      cites: [practice('the kind is on the label')],
    },
  ],
  says: {
    meets: 'The kind of battery is known.',
    fails: 'The kind of battery is not one that can be judged.',
    cannotTell: 'What was said of the kind of battery does not settle it: read the label.',
    notSeen: 'The kind of battery is not known, so its volts cannot be judged.',
  },
  next: 'Read and photograph the label.',
  who: 'shop technician',
  caution: 'batteries',
  proofs: wordProofs(
    [
      ['AGM', 'meets', 'sound'],
      ['flooded', 'meets', 'sound'],
      ['lithium iron phosphate', 'meets', 'sound'],
    ],
    true,
  ),
};
