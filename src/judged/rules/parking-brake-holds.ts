// Why: a coach that rolls kills.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const parkingBrakeHolds = worksRule({
  id: 'parking-brake-holds',
  asks: 'Does the parking brake hold?',
  why: 'A coach that rolls kills.',
  part: 'parking_brake',
  aspect: 'holds',
  also: ['operates'],
  look: 'On a grade, or against a low gear, with nobody in front.',
  minutes: 3,
  weight: 'danger',
  weightOfPoor: 'danger',
  cite: practice('a parking brake holds the coach on a grade'),
  says: {
    meets: 'The parking brake held.',
    fails: 'The parking brake does not hold.',
    cannotTell: 'What was said does not settle it: try it on a grade.',
    notSeen: 'Nobody has tried the parking brake.',
  },
  next: 'Chock it; brakes before it moves.',
  who: 'qualified brake technician',
  caution: 'driving',
});
