// Why: a leak at the hydraulic unit ends in a bigger bill.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const hydraulicLeak = noneRule({
  id: 'hydraulic-leak',
  asks: 'Is there a leak at the hydraulic unit?',
  why: 'It ends in a bigger bill.',
  part: 'hydraulic_unit',
  aspect: 'leak',
  look: 'With a light and a dry rag.',
  minutes: 4,
  weight: 'defect',
  cite: practice('it is dry and tight'),
  says: {
    meets: 'No leak at the hydraulic unit was found.',
    fails: 'There is a leak at the hydraulic unit.',
    cannotTell: 'What was said does not settle whether there is a leak at the hydraulic unit: look again.',
    notSeen: 'Nobody has looked for a leak at the hydraulic unit.',
  },
  next: 'Find and mend it.',
  who: 'heavy-vehicle technician',
  caution: 'hydraulics',
});
