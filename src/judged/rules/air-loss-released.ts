// Why: air is the brakes.
import { airLossReleasedStop } from '../../standards/trade-practice/engine-and-chassis.ts';
import { airLossReleased as airLossReleasedLimit } from '../../standards/us-code-of-federal-regulations/49-cfr-570-57.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const airLossReleased: Rule = {
  id: 'air-loss-released',
  asks: 'How fast does it lose air with the brakes released?',
  why: 'No air, no brakes.',
  part: 'air_gauges',
  aspect: 'static_loss',
  look: 'Chocked, engine off, brakes released, let it settle, then one minute.',
  minutes: 6,
  steps: [
    { weight: 'danger', must: 'at most', limit: airLossReleasedStop },
    { weight: 'unlawful', must: 'at most', limit: airLossReleasedLimit },
  ],
  says: {
    meets: 'It kept its air with the brakes released.',
    fails: 'It loses air with the brakes released.',
    cannotTell: 'The reading is too near a limit, or is not a loss by the minute.',
    notSeen: 'Air loss with the brakes released has not been timed.',
  },
  next: 'Find the leak before it is driven.',
  who: 'qualified brake technician',
  caution: 'air-brakes',
  proofs: numberProofs('[psi]/min', [
    [1, 'meets', 'sound'],
    [2, 'meets', 'sound'],
    [2.5, 'fails', 'repair'],
    [3, 'fails', 'repair'],
    [4, 'fails', 'stop'],
    [2, 'cannot tell', 'repair', 0.5],
  ]),
};
