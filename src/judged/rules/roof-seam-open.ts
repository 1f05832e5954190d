// Why: an open cap seam is a wall of water.
import { seamOpen, seamWhole } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const roofSeamOpen: Rule = {
  id: 'roof-seam-open',
  asks: 'Is a roof seam open?',
  why: 'It lets a wall full of water in.',
  part: 'roof_seams',
  aspect: 'open',
  look: 'Front and rear cap seams, edge rails and their screws.',
  minutes: 5,
  steps: [
    { weight: 'defect', must: 'at most', limit: seamOpen },
    { weight: 'wear', must: 'at most', limit: seamWhole },
  ],
  says: {
    meets: 'No open seam was found.',
    fails: 'A roof seam is open.',
    cannotTell: 'How long it is was not measured.',
    notSeen: 'Nobody has looked along the roof seams.',
  },
  next: 'Reseal at once; pin the walls below.',
  who: 'certified RV technician',
  caution: 'roof',
  proofs: numberProofs('[in_i]', [
    [0, 'meets', 'sound'],
    [0.2, 'fails', 'watch'],
    [0.25, 'fails', 'watch'],
    [2, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 0.1],
  ]),
};
