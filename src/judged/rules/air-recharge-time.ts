// Why: air is the brakes.
import { rechargeSlow } from '../../standards/trade-practice/engine-and-chassis.ts';
import { airRecharge } from '../../standards/us-code-of-federal-regulations/49-cfr-570-57.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const airRechargeTime: Rule = {
  id: 'air-recharge-time',
  asks: 'How long does it take to build up air?',
  why: 'No air, no brakes.',
  part: 'air_gauges',
  aspect: 'buildup_s',
  look: 'Chocked, from 85 to 100 psi at fast idle.',
  minutes: 6,
  steps: [
    { weight: 'danger', must: 'at most', limit: rechargeSlow },
    { weight: 'unlawful', must: 'at most', limit: airRecharge },
  ],
  says: {
    meets: 'It built up air in time.',
    fails: 'It builds up air too slowly.',
    cannotTell: 'The time is too near a limit, or is not a time.',
    notSeen: 'The build-up of air has not been timed.',
  },
  next: 'Compressor, dryer or a leak; larger tanks take longer.',
  who: 'qualified brake technician',
  caution: 'air-brakes',
  proofs: numberProofs('s', [
    [30, 'meets', 'sound'],
    [45, 'meets', 'sound'],
    [60, 'fails', 'repair'],
    [180, 'fails', 'repair'],
    [200, 'fails', 'stop'],
    [45, 'cannot tell', 'repair', 3],
  ]),
};
