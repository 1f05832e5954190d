// Why: a live skin kills whoever stands on wet ground.
import { skinStop, skinWatch } from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const skinVolts: Rule = {
  id: 'skin-volts',
  asks: 'Are there volts from the skin to earth?',
  why: 'It kills whoever touches it standing on wet ground.',
  part: 'electric_panel',
  aspect: 'skin_to_earth',
  look: 'Plugged in, meter from bare metal to a rod in the ground.',
  minutes: 3,
  steps: [
    { weight: 'danger', must: 'at most', limit: skinStop },
    { weight: 'defect', must: 'at most', limit: skinWatch },
  ],
  says: {
    meets: 'There was no more than a good meter picks up.',
    fails: 'There are volts on the skin.',
    cannotTell: 'The reading is too near a limit, or is not volts.',
    notSeen: 'Nobody has measured from skin to earth.',
  },
  next: 'Unplug, keep people off, call an electrician.',
  who: 'qualified electrician or certified RV technician',
  caution: 'shore-power',
  proofs: numberProofs('V', [
    [0, 'meets', 'sound'],
    [2, 'meets', 'sound'],
    [3, 'fails', 'repair'],
    [5, 'fails', 'repair'],
    [12, 'fails', 'stop'],
    [2, 'cannot tell', 'watch', 0.5],
    [5, 'cannot tell', 'stop', 1],
  ]),
};
