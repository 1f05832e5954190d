// Why: the floor for hydraulic and electric brakes is thinner than for air.

import { liningHydraulic } from '../../standards/us-code-of-federal-regulations/49-cfr-393-47.ts';
import { mayHaveAirBrakes } from '../making/brakes.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const brakeLiningHydraulic: Rule = {
  id: 'brake-lining-hydraulic',
  asks: 'How much lining is on the brakes?',
  why: 'It is the stopping distance.',
  part: 'brake_drum_rotor',
  aspect: 'lining',
  appliesTo: (facts) => !mayHaveAirBrakes(facts),
  look: 'Through the caliper, or with the wheel off.',
  minutes: 10,
  steps: [{ weight: 'danger', must: 'at least', limit: liningHydraulic }],
  says: {
    meets: 'There is lining left above the floor.',
    fails: 'The lining is at its end.',
    cannotTell: 'The reading is too near the limit, or is not a thickness.',
    notSeen: 'The lining has not been measured.',
  },
  next: 'Pads or shoes for the axle; look at rotors and drums.',
  who: 'qualified brake technician',
  caution: 'lifting',
  proofs: numberProofs('[in_i]', [
    [0.05, 'fails', 'stop'],
    [0.0625, 'meets', 'sound'],
    [0.25, 'meets', 'sound'],
    [0.0625, 'cannot tell', 'stop', 0.02],
  ]),
};
