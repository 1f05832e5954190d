// Why: a soft floor is rot below.
import { floorSoft as floorSoftLimit, floorSoftMuch } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const floorSoft: Rule = {
  id: 'floor-soft',
  asks: 'Is the floor soft?',
  why: 'There is rot below.',
  part: 'floor_main',
  aspect: 'soft',
  look: 'In socks, heel first, along walls and at the door.',
  minutes: 6,
  steps: [
    { weight: 'defect', must: 'at most', limit: floorSoftMuch },
    { weight: 'wear', must: 'at most', limit: floorSoftLimit },
  ],
  says: {
    meets: 'The floor was firm where it was walked.',
    fails: 'The floor is soft.',
    cannotTell: 'How large the soft place is was not measured.',
    notSeen: 'Nobody has walked the floor for soft places.',
  },
  next: 'Find the water; measure the place; price the deck.',
  who: 'body or trim technician',
  proofs: numberProofs('[in_i]2', [
    [0, 'meets', 'sound'],
    [100, 'fails', 'watch'],
    [144, 'fails', 'watch'],
    [200, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 20],
  ]),
};
