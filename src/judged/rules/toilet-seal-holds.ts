// Why: a toilet that does not hold water smells by evening.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const toiletSealHolds = worksRule({
  id: 'toilet-seal-holds',
  asks: 'Does the toilet hold water?',
  why: 'Smell and rot come of it.',
  part: 'toilet',
  aspect: 'seal_holds',
  look: 'Fill the bowl, watch ten minutes.',
  minutes: 6,
  weight: 'defect',
  cite: practice('the bowl holds its water'),
  says: {
    meets: 'The bowl held its water.',
    fails: 'The bowl does not hold its water.',
    cannotTell: 'What was said does not settle it: fill it and wait.',
    notSeen: 'Nobody has filled the bowl and waited.',
  },
  next: 'Seal; look at the floor round the base.',
  who: 'certified RV technician',
  caution: 'sewage',
});
