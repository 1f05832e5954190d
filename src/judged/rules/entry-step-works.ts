// Why: people fall off steps.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const entryStepWorks = worksRule({
  id: 'entry-step-works',
  asks: 'Does the entry step come out, hold and go in?',
  why: 'People fall, and a step left out is torn off.',
  part: 'entry_step',
  aspect: 'operates',
  look: 'Out and in with the door; stand on it.',
  minutes: 3,
  weight: 'defect',
  cite: practice('a step comes out, holds and goes in with the door'),
  says: {
    meets: 'The entry step did its work when tried.',
    fails: 'The entry step did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the entry step works: try again.',
    notSeen: 'Nobody has tried the entry step.',
  },
  next: 'Motor, linkage or switch.',
  who: 'shop technician',
});
