// Why: a roof leak shows in the ceiling.
import { ceilingFlat, ceilingSag as ceilingSagLimit } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const ceilingSag: Rule = {
  id: 'ceiling-sag',
  asks: 'Does the ceiling sag?',
  why: 'A roof leak shows there.',
  part: 'ceiling',
  aspect: 'sag',
  look: 'Along it in raking light; rings at vents; a straightedge.',
  minutes: 5,
  steps: [
    { weight: 'defect', must: 'at most', limit: ceilingSagLimit },
    { weight: 'wear', must: 'at most', limit: ceilingFlat },
  ],
  says: {
    meets: 'The ceiling was flat.',
    fails: 'The ceiling sags.',
    cannotTell: 'How far it sags was not measured.',
    notSeen: 'Nobody has looked along the ceiling.',
  },
  next: 'Find the water on the roof first.',
  who: 'body or trim technician',
  proofs: numberProofs('[in_i]', [
    [0, 'meets', 'sound'],
    [0.25, 'fails', 'watch'],
    [0.5, 'fails', 'watch'],
    [1, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 0.1],
  ]),
};
