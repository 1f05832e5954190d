// Why: a coach that cannot be levelled cannot be lived in.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const jacksWork = worksRule({
  id: 'jacks-work',
  asks: 'Do the jacks level the coach?',
  why: 'Slides and refrigerator want a level coach.',
  part: 'levelling_jacks',
  aspect: 'operates',
  look: 'Down, level, up; look for oil; watch it next day.',
  minutes: 6,
  weight: 'defect',
  weightOfPoor: 'defect',
  cite: practice('jacks go down, hold and come up'),
  says: {
    meets: 'The jacks did their work when tried.',
    fails: 'The jacks did not work when tried, or not as they should.',
    cannotTell: 'What was said does not settle whether the jacks work: try again.',
    notSeen: 'Nobody has tried the jacks.',
  },
  next: 'Fluid, solenoid or jack; it does not move with a jack down.',
  who: 'certified RV technician',
  caution: 'hydraulics',
});
