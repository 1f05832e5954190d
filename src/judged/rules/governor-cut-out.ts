// Why: air is the brakes.
import { reliefValve } from '../../standards/trade-practice/engine-and-chassis.ts';
import { governorCutOut as governorCutOutLimit } from '../../standards/us-code-of-federal-regulations/49-cfr-570-57.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const governorCutOut: Rule = {
  id: 'governor-cut-out',
  asks: 'At what pressure does the compressor stop?',
  why: 'No air, no brakes.',
  part: 'air_gauges',
  aspect: 'cut_out',
  look: 'Fast idle until the needle stops.',
  minutes: 6,
  steps: [
    { weight: 'danger', must: 'at most', limit: reliefValve },
    { weight: 'unlawful', must: 'at most', limit: governorCutOutLimit },
  ],
  says: {
    meets: 'It stops in time.',
    fails: 'It stops too late.',
    cannotTell: 'The reading is too near a limit, or is not a pressure.',
    notSeen: 'Cut-out has not been read.',
  },
  next: 'Governor; over 150 psi the safety valve is all that is left.',
  who: 'qualified brake technician',
  caution: 'air-brakes',
  proofs: numberProofs('[psi]', [
    [125, 'meets', 'sound'],
    [135, 'meets', 'sound'],
    [140, 'fails', 'repair'],
    [150, 'fails', 'repair'],
    [155, 'fails', 'stop'],
    [135, 'cannot tell', 'repair', 3],
  ]),
};
