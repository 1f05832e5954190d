// Why: air is the brakes.
import { airLossAppliedStop } from '../../standards/trade-practice/engine-and-chassis.ts';
import { airLossApplied as airLossAppliedLimit } from '../../standards/us-code-of-federal-regulations/49-cfr-570-57.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const airLossApplied: Rule = {
  id: 'air-loss-applied',
  asks: 'How fast does it lose air with the brakes applied?',
  why: 'No air, no brakes.',
  part: 'air_gauges',
  aspect: 'applied_loss',
  look: 'Chocked, engine off, full pedal, let it settle, then one minute.',
  minutes: 6,
  steps: [
    { weight: 'danger', must: 'at most', limit: airLossAppliedStop },
    { weight: 'unlawful', must: 'at most', limit: airLossAppliedLimit },
  ],
  says: {
    meets: 'It kept its air with the brakes applied.',
    fails: 'It loses air with the brakes applied.',
    cannotTell: 'The reading is too near a limit, or is not a loss by the minute.',
    notSeen: 'Air loss with the brakes applied has not been timed.',
  },
  next: 'Find the leak before it is driven.',
  who: 'qualified brake technician',
  caution: 'air-brakes',
  proofs: numberProofs('[psi]/min', [
    [2, 'meets', 'sound'],
    [3, 'meets', 'sound'],
    [3.5, 'fails', 'repair'],
    [4, 'fails', 'repair'],
    [5, 'fails', 'stop'],
    [3, 'cannot tell', 'repair', 0.5],
  ]),
};
