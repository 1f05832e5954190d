// Why: a leak at the differential ends in a bigger bill.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const differentialLeak = noneRule({
  id: 'differential-leak',
  asks: 'Is there a leak at the differential?',
  why: 'It ends in a bigger bill.',
  part: 'differential',
  aspect: 'leak',
  look: 'With a light and a dry rag.',
  minutes: 4,
  weight: 'defect',
  cite: practice('it is dry and tight'),
  says: {
    meets: 'No leak at the differential was found.',
    fails: 'There is a leak at the differential.',
    cannotTell: 'What was said does not settle whether there is a leak at the differential: look again.',
    notSeen: 'Nobody has looked for a leak at the differential.',
  },
  next: 'Find and mend it.',
  who: 'heavy-vehicle technician',
  caution: 'lifting',
});
