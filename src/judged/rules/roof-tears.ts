// Why: any tear lets water in.
import { noTear } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const roofTears: Rule = {
  id: 'roof-tears',
  asks: 'Is the roof covering torn?',
  why: 'The roof is the costliest fault of the house.',
  part: 'roof_membrane',
  aspect: 'tears',
  look: 'In quarters, on foot or by a pole camera.',
  minutes: 15,
  steps: [{ weight: 'defect', must: 'at most', limit: noTear }],
  says: {
    meets: 'No tear was found.',
    fails: 'The roof covering is torn.',
    cannotTell: 'They were not counted.',
    notSeen: 'Nobody has looked at the roof covering.',
  },
  next: 'Patch at once; pin the ceiling below.',
  who: 'certified RV technician',
  caution: 'roof',
  proofs: numberProofs('1', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'repair'],
    [4, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 1],
  ]),
};
