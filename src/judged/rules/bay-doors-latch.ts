// Why: a bay door that opens in traffic hits people.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const bayDoorsLatch = worksRule({
  id: 'bay-doors-latch',
  asks: 'Do the bay doors latch?',
  why: 'A door that opens in traffic hits people.',
  part: 'compartment_doors',
  aspect: 'latches_ok',
  look: 'Open, let the struts hold, shut, pull.',
  minutes: 4,
  weight: 'danger',
  weightOfPoor: 'defect',
  cite: practice('every bay door latches'),
  says: {
    meets: 'The bay door latches did their work when tried.',
    fails: 'The bay door latches did not work when tried, or not as they should.',
    cannotTell: 'What was said does not settle whether the bay door latches work: try again.',
    notSeen: 'Nobody has tried the bay door latches.',
  },
  next: 'Latch, striker or hinge before it is driven.',
  who: 'shop technician',
});
