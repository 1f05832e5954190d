// Why: air is the brakes.
import { warningLate } from '../../standards/trade-practice/engine-and-chassis.ts';
import { lowAirWarning as lowAirWarningLimit } from '../../standards/us-code-of-federal-regulations/49-cfr-570-57.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const lowAirWarning: Rule = {
  id: 'low-air-warning',
  asks: 'At what pressure does the low-air warning start?',
  why: 'No air, no brakes.',
  part: 'air_gauges',
  aspect: 'alarm_at',
  look: 'Chocked, key on, fan the pedal until it sounds.',
  minutes: 6,
  steps: [
    { weight: 'danger', must: 'at least', limit: warningLate },
    { weight: 'unlawful', must: 'at least', limit: lowAirWarningLimit },
  ],
  says: {
    meets: 'It warns early enough.',
    fails: 'It warns too late.',
    cannotTell: 'The reading is too near a limit, or is not a pressure.',
    notSeen: 'The low-air warning has not been tried.',
  },
  next: 'Switch or gauge before it is driven.',
  who: 'qualified brake technician',
  caution: 'air-brakes',
  proofs: numberProofs('[psi]', [
    [50, 'fails', 'stop'],
    [55, 'fails', 'repair'],
    [58, 'fails', 'repair'],
    [60, 'meets', 'sound'],
    [68, 'meets', 'sound'],
    [60, 'cannot tell', 'repair', 2],
  ]),
};
