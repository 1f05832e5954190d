// Why: a waste tank leaks when it is full.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const tankFillLeak = noneRule({
  id: 'tank-fill-leak',
  asks: 'Do the waste tanks leak when full?',
  why: 'Taking a tank out costs 1,500 to 3,000 dollars.',
  part: 'tank_fill_test',
  aspect: 'leak',
  look: 'Fill, look under, drain.',
  minutes: 8,
  weight: 'defect',
  cite: practice('a full tank is dry below'),
  says: {
    meets: 'No leak at a full tank was found.',
    fails: 'There is a leak at a full tank.',
    cannotTell: 'What was said does not settle whether there is a leak at a full tank: look again.',
    notSeen: 'Nobody has looked for a leak at a full tank.',
  },
  next: 'Fitting or tank; look at the straps.',
  who: 'certified RV technician',
  caution: 'sewage',
});
