// Why: a coach that leans steers to one side.
import { heightDiffOut, heightDiffWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const rideHeight: Rule = {
  id: 'ride-height',
  asks: 'Does it stand level on its air springs?',
  why: 'It leans and steers to one side.',
  part: 'suspension_air',
  aspect: 'height_diff',
  look: 'Aired up, on level ground, side to side.',
  minutes: 6,
  steps: [
    { weight: 'defect', must: 'at most', limit: heightDiffOut },
    { weight: 'wear', must: 'at most', limit: heightDiffWatch },
  ],
  says: {
    meets: 'It stood level.',
    fails: 'It does not stand level.',
    cannotTell: 'The difference does not settle it.',
    notSeen: 'Ride height has not been measured.',
  },
  next: 'Height valves, then springs.',
  who: 'heavy-vehicle technician',
  caution: 'lifting',
  proofs: numberProofs('[in_i]', [
    [0.25, 'meets', 'sound'],
    [0.5, 'meets', 'sound'],
    [0.75, 'fails', 'watch'],
    [1, 'fails', 'watch'],
    [1.5, 'fails', 'repair'],
    [0.5, 'cannot tell', 'watch', 0.1],
  ]),
};
