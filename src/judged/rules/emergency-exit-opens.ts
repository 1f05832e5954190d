// Why: in a fire it is the only way out.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { worksRule } from '../making/works-rule.ts';

export const emergencyExitOpens = worksRule({
  id: 'emergency-exit-opens',
  asks: 'Does the emergency exit open?',
  why: 'In a fire it is a way out.',
  part: 'emergency_exit',
  aspect: 'opens',
  also: ['operates'],
  look: 'Open it all the way, shut it, latch it.',
  minutes: 3,
  weight: 'danger',
  weightOfPoor: 'defect',
  cite: rvStandard('an emergency exit opens from inside without a tool'),
  says: {
    meets: 'The emergency exit did its work when tried.',
    fails: 'The emergency exit did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the emergency exit works: try again.',
    notSeen: 'Nobody has tried the emergency exit.',
  },
  next: 'Free or mend it before anyone sleeps in the coach.',
  who: 'certified RV technician',
});
