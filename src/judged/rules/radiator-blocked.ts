// Why: a rear radiator clogs from the engine's own oil mist.
import { radiatorOut, radiatorWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const radiatorBlocked: Rule = {
  id: 'radiator-blocked',
  asks: 'How much of the radiator is blocked?',
  why: 'Rear radiators clog and the engine runs hot on the first grade.',
  part: 'radiator_cac',
  aspect: 'fins_blocked',
  look: 'A light through the fins; the fan side for an oily mat.',
  minutes: 6,
  steps: [
    { weight: 'defect', must: 'at most', limit: radiatorOut },
    { weight: 'wear', must: 'at most', limit: radiatorWatch },
  ],
  says: {
    meets: 'Most of the face was clear.',
    fails: 'Part of the face is blocked.',
    cannotTell: 'How much is blocked was not settled.',
    notSeen: 'Nobody has put a light through the fins.',
  },
  next: 'Clean from the engine side with a degreaser and low pressure.',
  who: 'shop technician',
  caution: 'engine',
  proofs: numberProofs('%', [
    [5, 'meets', 'sound'],
    [10, 'meets', 'sound'],
    [20, 'fails', 'watch'],
    [30, 'fails', 'watch'],
    [40, 'fails', 'repair'],
    [10, 'cannot tell', 'watch', 5],
  ]),
};
