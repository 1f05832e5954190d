// Why: burned contacts start fires.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const transferSwitchBurn = noneRule({
  id: 'transfer-switch-burn',
  asks: 'Does the transfer switch smell or feel burnt?',
  why: 'Burned contacts start fires.',
  part: 'transfer_switch',
  aspect: 'burn',
  look: 'Covers on: listen for one clunk, feel for heat, smell.',
  minutes: 4,
  weight: 'danger',
  cite: practice('a transfer switch is cool and does not smell'),
  says: {
    meets: 'No burn was smelled or felt at the transfer switch.',
    fails: 'The transfer switch is burnt.',
    cannotTell: 'What was said does not settle it.',
    notSeen: 'Nobody has smelled or felt the transfer switch.',
  },
  next: 'Unplug and shut off; an electrician opens it.',
  who: 'qualified electrician or certified RV technician',
  caution: 'shore-power',
});
