// Why: one lamp out is a bulb, three are wiring.
import { noLampOut, oneLampOut } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const markerLampsOut: Rule = {
  id: 'marker-lamps-out',
  asks: 'Is a marker lamp out?',
  why: 'It is the law, and the first thing a buyer sees at dusk.',
  part: 'marker_lights',
  aspect: 'out',
  look: 'All lamps on, walk round.',
  minutes: 5,
  steps: [
    { weight: 'unlawful', must: 'at most', limit: oneLampOut },
    { weight: 'wear', must: 'at most', limit: noLampOut },
  ],
  says: {
    meets: 'Every marker lamp was lit.',
    fails: 'A marker lamp is out.',
    cannotTell: 'How many are out was not counted: walk round with the lamps on.',
    notSeen: 'Nobody has walked round with the lamps on.',
  },
  next: 'Bulb first; more than one out at once is a ground or a wire.',
  who: 'shop technician',
  proofs: numberProofs('1', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'watch'],
    [2, 'fails', 'repair'],
    [5, 'fails', 'repair'],
    [1, 'cannot tell', 'repair', 1],
  ]),
};
