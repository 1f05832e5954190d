// Why: a hub that loses its oil seizes.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const wheelBearingLeak = noneRule({
  id: 'wheel-bearing-leak',
  asks: 'Does a hub leak?',
  why: 'A dry hub seizes and the wheel goes.',
  part: 'wheel_bearings',
  aspect: 'leak',
  look: 'Oil window and inside of the wheel.',
  minutes: 4,
  weight: 'defect',
  cite: practice('a hub keeps its oil'),
  says: {
    meets: 'No leak at a hub was found.',
    fails: 'There is a leak at a hub.',
    cannotTell: 'What was said does not settle whether there is a leak at a hub: look again.',
    notSeen: 'Nobody has looked for a leak at a hub.',
  },
  next: 'Seal, bearings, and the lining the oil has reached.',
  who: 'heavy-vehicle technician',
  caution: 'lifting',
});
