// Why: air is the brakes.
import { cutInWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { governorCutIn as governorCutInLimit } from '../../standards/us-code-of-federal-regulations/49-cfr-570-57.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const governorCutIn: Rule = {
  id: 'governor-cut-in',
  asks: 'At what pressure does the compressor start again?',
  why: 'No air, no brakes.',
  part: 'air_gauges',
  aspect: 'cut_in',
  look: 'Fan the pedal, engine running; read the needle when it starts to rise.',
  minutes: 6,
  steps: [
    { weight: 'unlawful', must: 'at least', limit: governorCutInLimit },
    { weight: 'wear', must: 'at least', limit: cutInWatch },
  ],
  says: {
    meets: 'It starts again early enough.',
    fails: 'It starts again too late.',
    cannotTell: 'The reading is too near a limit, or is not a pressure.',
    notSeen: 'Cut-in has not been read.',
  },
  next: 'Governor or dryer.',
  who: 'qualified brake technician',
  caution: 'air-brakes',
  proofs: numberProofs('[psi]', [
    [70, 'fails', 'repair'],
    [80, 'fails', 'watch'],
    [84, 'fails', 'watch'],
    [85, 'meets', 'sound'],
    [105, 'meets', 'sound'],
    [85, 'cannot tell', 'watch', 2],
  ]),
};
