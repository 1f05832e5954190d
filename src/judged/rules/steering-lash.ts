// Why: how far the wheel turns before the wheels do.
import { lashWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { lashManual18, lashPower18 } from '../../standards/us-code-of-federal-regulations/49-cfr-393-209.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const steeringLash: Rule = {
  id: 'steering-lash',
  asks: 'How much play is in the steering wheel?',
  why: 'It wanders.',
  part: 'steering_gear',
  aspect: 'free_play',
  look: 'Engine on, wheels straight, a tape at the rim: how far until the front wheels move. Note the diameter of the wheel.',
  minutes: 8,
  steps: [
    { weight: 'danger', must: 'at most', limit: lashPower18 },
    { weight: 'defect', must: 'at most', limit: lashManual18 },
    { weight: 'wear', must: 'at most', limit: lashWatch },
  ],
  says: {
    meets: 'The play was small.',
    fails: 'There is play in the steering.',
    cannotTell: 'The play does not settle it: measure at the rim, engine on.',
    notSeen: 'The play has not been measured.',
  },
  next: 'Find the joint, box or bearing before it is driven far.',
  who: 'heavy-vehicle technician',
  caution: 'lifting',
  proofs: numberProofs('[in_i]', [
    [0.5, 'meets', 'sound'],
    [1, 'meets', 'sound'],
    [2, 'fails', 'watch'],
    [2.25, 'fails', 'watch'],
    [3, 'fails', 'repair'],
    [4.75, 'fails', 'repair'],
    [5, 'fails', 'stop'],
    [1, 'cannot tell', 'watch', 0.2],
    [4.75, 'cannot tell', 'stop', 0.3],
  ]),
};
