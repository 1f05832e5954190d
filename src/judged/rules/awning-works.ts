// Why: an awning that will not stow opens on the road.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const awningWorks = worksRule({
  id: 'awning-works',
  asks: 'Does the awning go out and in?',
  why: 'An awning that does not latch opens on the road.',
  part: 'patio_awning',
  aspect: 'operates',
  look: 'All the way out, look up through the fabric, all the way in.',
  minutes: 6,
  weight: 'defect',
  cite: practice('an awning goes out and in and latches'),
  says: {
    meets: 'The awning did its work when tried.',
    fails: 'The awning did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the awning works: try again.',
    notSeen: 'Nobody has tried the awning.',
  },
  next: 'Arms, motor or switch; until then tie it for travel.',
  who: 'certified RV technician',
  caution: 'hydraulics',
});
