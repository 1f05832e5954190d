// Why: motors die at low volts, everything at high volts.
import {
  legHigh,
  legLow,
  legTooHigh,
  legTooLow,
  legWatch,
} from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const shoreVoltsLeg1: Rule = {
  id: 'shore-volts-leg-1',
  asks: 'Are the volts on this leg right?',
  why: 'Motors die at low volts, everything at high ones.',
  part: 'electric_panel',
  aspect: 'volts_leg1',
  look: 'Shore power on, plug meter, one outlet on each leg.',
  minutes: 4,
  steps: [
    { weight: 'danger', must: 'at least', limit: legTooLow },
    { weight: 'danger', must: 'at most', limit: legTooHigh },
    { weight: 'defect', must: 'at least', limit: legLow },
    { weight: 'defect', must: 'at most', limit: legHigh },
    { weight: 'wear', must: 'at least', limit: legWatch },
  ],
  says: {
    meets: 'The volts were right.',
    fails: 'The volts are not right.',
    cannotTell: 'The reading is too near a limit, or is not volts.',
    notSeen: 'The volts on this leg have not been measured.',
  },
  next: 'Unplug; find out whether it is the pedestal, the cord or the coach.',
  who: 'qualified electrician or certified RV technician',
  caution: 'shore-power',
  proofs: numberProofs('V', [
    [100, 'fails', 'stop'],
    [105, 'fails', 'repair'],
    [107, 'fails', 'repair'],
    [108, 'fails', 'watch'],
    [113, 'fails', 'watch'],
    [114, 'meets', 'sound'],
    [120, 'meets', 'sound'],
    [126, 'meets', 'sound'],
    [128, 'fails', 'repair'],
    [132, 'fails', 'repair'],
    [134, 'fails', 'stop'],
    [114, 'cannot tell', 'watch', 1],
    [126, 'cannot tell', 'watch', 1],
    [132, 'cannot tell', 'stop', 1],
  ]),
};
