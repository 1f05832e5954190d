// Why: a road test in the rain needs them.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const wipersWork = worksRule({
  id: 'wipers-work',
  asks: 'Do the wipers sweep?',
  why: 'A road test in rain depends on them.',
  part: 'wipers_washers',
  aspect: 'operates',
  also: ['sweep_ok'],
  look: 'All speeds, with the washer.',
  minutes: 2,
  weight: 'unlawful',
  cite: practice('wipers sweep clear and park'),
  says: {
    meets: 'The wipers did their work when tried.',
    fails: 'The wipers did not work when tried, or not as they should.',
    cannotTell: 'What was said does not settle whether the wipers work: try again.',
    notSeen: 'Nobody has tried the wipers.',
  },
  next: 'Blades, arms or motor before it goes out.',
  who: 'shop technician',
});
