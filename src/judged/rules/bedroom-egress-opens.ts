// Why: whoever sleeps in the back has to get out of the back.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { worksRule } from '../making/works-rule.ts';

export const bedroomEgressOpens = worksRule({
  id: 'bedroom-egress-opens',
  asks: 'Does the bedroom exit open?',
  why: 'It is the way out for whoever sleeps there.',
  part: 'bedroom_egress',
  aspect: 'opens',
  also: ['operates'],
  look: 'From the bed, with one hand, the way clear.',
  minutes: 2,
  weight: 'danger',
  weightOfPoor: 'defect',
  cite: rvStandard('a second way out of the sleeping place opens from inside'),
  says: {
    meets: 'The bedroom exit did its work when tried.',
    fails: 'The bedroom exit did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the bedroom exit works: try again.',
    notSeen: 'Nobody has tried the bedroom exit.',
  },
  next: 'Free it, clear the way, before anyone sleeps there.',
  who: 'certified RV technician',
});
