// Why: crossed wires put the skin of the coach on the hot side.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const shorePolarity = worksRule({
  id: 'shore-polarity',
  asks: 'Is the polarity right?',
  why: 'The skin of the coach may be live.',
  part: 'electric_panel',
  aspect: 'polarity_ok',
  look: 'Plug tester, before anything is switched on.',
  minutes: 2,
  weight: 'danger',
  cite: practice('hot, neutral and ground are where they belong'),
  says: {
    meets: 'The tester showed the wires where they belong.',
    fails: 'The tester shows a wiring fault.',
    cannotTell: 'What was said does not settle it: plug a tester in.',
    notSeen: 'Nobody has used a plug tester.',
  },
  next: 'Unplug; find out whether it is the pedestal or the coach.',
  who: 'qualified electrician or certified RV technician',
  caution: 'shore-power',
});
