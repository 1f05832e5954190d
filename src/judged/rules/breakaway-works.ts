// Why: what stops a trailer that has come loose.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const breakawayWorks = worksRule({
  id: 'breakaway-works',
  asks: 'Does the breakaway switch set the trailer brakes?',
  why: 'It stops a trailer that has come loose.',
  part: 'brake_trailer',
  aspect: 'breakaway_operates',
  also: ['operates'],
  look: 'Pull the pin, try to roll it.',
  minutes: 4,
  weight: 'danger',
  cite: practice('a pulled pin sets the brakes'),
  says: {
    meets: 'The breakaway switch did its work when tried.',
    fails: 'The breakaway switch did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the breakaway switch works: try again.',
    notSeen: 'Nobody has tried the breakaway switch.',
  },
  next: 'Battery, switch or wiring before it is towed.',
  who: 'shop technician',
  caution: 'driving',
});
