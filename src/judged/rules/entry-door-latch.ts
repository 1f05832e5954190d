// Why: an entry door that does not latch opens on the road.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const entryDoorLatch = worksRule({
  id: 'entry-door-latch',
  asks: 'Does the entry door latch?',
  why: 'A door can open on the road.',
  part: 'entry_door',
  aspect: 'latch_ok',
  look: 'Shut it with one finger, pull it, lock it.',
  minutes: 3,
  weight: 'danger',
  weightOfPoor: 'defect',
  cite: practice('an entry door latches by itself and stays shut'),
  says: {
    meets: 'The entry door latch did its work when tried.',
    fails: 'The entry door latch did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the entry door latch works: try again.',
    notSeen: 'Nobody has tried the entry door latch.',
  },
  next: 'Adjust or change the latch before it is driven.',
  who: 'shop technician',
  caution: 'driving',
});
