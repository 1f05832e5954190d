// Why: a brown blade is a fire that stopped in time.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const shoreCordBurn = noneRule({
  id: 'shore-cord-burn',
  asks: 'Are the shore cord or inlet burnt?',
  why: 'A burnt plug is a fire that stopped in time.',
  part: 'shore_cord',
  aspect: 'burn_marks',
  look: 'Unplugged at the pedestal: the blades and the inlet.',
  minutes: 3,
  weight: 'danger',
  cite: practice('brown or melted plug blades are not used again'),
  says: {
    meets: 'No burn was seen on plug or inlet.',
    fails: 'Plug or inlet is burnt.',
    cannotTell: 'What was said does not settle it: look at blades and inlet.',
    notSeen: 'Nobody has looked at the plug and inlet for burns.',
  },
  next: 'Unplug it; change plug and inlet; find out what ran hot.',
  who: 'qualified electrician or certified RV technician',
  caution: 'shore-power',
});
