// Why: a coach that does not start is not sold that day.
import { crankVolts, crankVoltsGood } from '../../standards/trade-practice/battery-voltages.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const chassisCrankVolts: Rule = {
  id: 'chassis-crank-volts',
  asks: 'Does the chassis battery crank?',
  why: 'A coach that does not start is not sold that day.',
  part: 'chassis_battery',
  aspect: 'cranking_voltage',
  look: 'Meter at the posts while it cranks.',
  minutes: 4,
  steps: [
    { weight: 'defect', must: 'at least', limit: crankVolts },
    { weight: 'wear', must: 'at least', limit: crankVoltsGood },
  ],
  says: {
    meets: 'It held its volts while cranking.',
    fails: 'It sagged while cranking.',
    cannotTell: 'The reading is too near a limit, or is not volts.',
    notSeen: 'Nobody has measured it while cranking.',
  },
  next: 'Charge, load-test each battery, clean the cables.',
  who: 'shop technician',
  caution: 'batteries',
  proofs: numberProofs('V', [
    [9, 'fails', 'repair'],
    [9.6, 'fails', 'watch'],
    [9.9, 'fails', 'watch'],
    [10, 'meets', 'sound'],
    [11, 'meets', 'sound'],
    [10, 'cannot tell', 'watch', 0.1],
  ]),
};
