// Why: a short tear is patched, a long one is new fabric.
import { awningHole, awningTear as awningTearLimit } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const awningTear: Rule = {
  id: 'awning-tear',
  asks: 'Is the awning fabric torn?',
  why: 'New fabric costs 400 to 1,500 dollars.',
  part: 'patio_awning',
  aspect: 'tears',
  look: 'Look up through the fabric when it is out.',
  minutes: 3,
  steps: [
    { weight: 'defect', must: 'at most', limit: awningTearLimit },
    { weight: 'wear', must: 'at most', limit: awningHole },
  ],
  says: {
    meets: 'No tear was seen.',
    fails: 'The fabric is torn.',
    cannotTell: 'How long the tear is was not measured.',
    notSeen: 'Nobody has looked through the fabric.',
  },
  next: 'Patch or price new fabric.',
  who: 'certified RV technician',
  caution: 'hydraulics',
  proofs: numberProofs('[in_i]', [
    [0, 'meets', 'sound'],
    [2, 'fails', 'watch'],
    [6, 'fails', 'watch'],
    [7, 'fails', 'repair'],
    [6, 'fails', 'watch', 1],
    [0, 'cannot tell', 'watch', 0.5],
  ]),
};
