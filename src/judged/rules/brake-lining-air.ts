// Why: lining is what stops a heavy coach.

import { liningWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { liningAirDrum } from '../../standards/us-code-of-federal-regulations/49-cfr-393-47.ts';
import { mayHaveAirBrakes } from '../making/brakes.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const brakeLiningAir: Rule = {
  id: 'brake-lining-air',
  asks: 'How much lining is on the air brakes?',
  why: 'It is the stopping distance.',
  part: 'brake_drum_rotor',
  aspect: 'lining',
  appliesTo: mayHaveAirBrakes,
  look: 'Through the inspection hole, or with the wheel off.',
  minutes: 10,
  steps: [
    { weight: 'danger', must: 'at least', limit: liningAirDrum },
    { weight: 'wear', must: 'at least', limit: liningWatch },
  ],
  says: {
    meets: 'There is lining to spare.',
    fails: 'The lining is thin.',
    cannotTell: 'The reading is too near a limit, or is not a thickness.',
    notSeen: 'The lining has not been measured.',
  },
  next: 'Reline the axle; look for oil and for drums that are cracked.',
  who: 'qualified brake technician',
  caution: 'lifting',
  proofs: numberProofs('[in_i]', [
    [0.2, 'fails', 'stop'],
    [0.25, 'fails', 'watch'],
    [0.3, 'fails', 'watch'],
    [0.375, 'meets', 'sound'],
    [0.5, 'meets', 'sound'],
    [0.25, 'cannot tell', 'stop', 0.03],
    [0.375, 'cannot tell', 'watch', 0.05],
  ]),
};
