// Why: an inch of open sealant floods a wall over a season.
import { noneOpen } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const sideSealantVoids: Rule = {
  id: 'side-sealant-voids',
  asks: 'Is sealant open on the sides?',
  why: 'An inch of gap floods a wall over a season.',
  part: 'sealant_side',
  aspect: 'voids',
  look: 'Trace it at every window, lamp, trim and corner.',
  minutes: 6,
  steps: [{ weight: 'defect', must: 'at most', limit: noneOpen }],
  says: {
    meets: 'No open place was found in the sealant.',
    fails: 'The sealant is open.',
    cannotTell: 'They were not counted: trace them.',
    notSeen: 'Nobody has traced the side sealant.',
  },
  next: 'Clean out and reseal; pin the wall below for water.',
  who: 'body technician',
  proofs: numberProofs('1', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'repair'],
    [4, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 1],
  ]),
};
