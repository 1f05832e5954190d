// Why: the horn is a safety item nobody tries.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const hornWorks = worksRule({
  id: 'horn-works',
  asks: 'Does the horn sound?',
  why: 'It is a safety item, and it is rarely tried.',
  part: 'horn',
  aspect: 'operates',
  look: 'Press it.',
  minutes: 1,
  weight: 'unlawful',
  cite: practice('a horn sounds'),
  says: {
    meets: 'The horn did its work when tried.',
    fails: 'The horn did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the horn works: try again.',
    notSeen: 'Nobody has tried the horn.',
  },
  next: 'Fuse, relay or clock spring.',
  who: 'shop technician',
});
