// Why: what breaks there lets a car loose on the road.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const hitchCracks = noneRule({
  id: 'hitch-cracks',
  asks: 'Is the hitch cracked?',
  why: 'It lets the towed vehicle loose.',
  part: 'hitch_receiver',
  aspect: 'cracks',
  also: ['crack'],
  look: 'Welds and pin holes, with a light and a brush.',
  minutes: 3,
  weight: 'danger',
  cite: practice('a receiver has no crack'),
  says: {
    meets: 'No crack in the hitch was found.',
    fails: 'There is a crack in the hitch.',
    cannotTell: 'What was said does not settle whether there is a crack in the hitch: look again.',
    notSeen: 'Nobody has looked for a crack in the hitch.',
  },
  next: 'Tow nothing until a welder of heavy vehicles has seen it.',
  who: 'heavy-vehicle technician',
});
