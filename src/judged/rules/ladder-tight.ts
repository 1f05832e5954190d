// Why: people fall off ladders.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const ladderTight = worksRule({
  id: 'ladder-tight',
  asks: 'Is the rear ladder tight?',
  why: 'People fall.',
  part: 'ladder_rear',
  aspect: 'tight',
  look: 'Shake it; look at its screws for leak stains.',
  minutes: 2,
  weight: 'defect',
  cite: practice('a ladder is tight and sealed'),
  says: {
    meets: 'The ladder was tight.',
    fails: 'The ladder is loose.',
    cannotTell: 'What was said does not settle it: shake it.',
    notSeen: 'Nobody has tried the ladder.',
  },
  next: 'Reseat and reseal; until then nobody climbs it.',
  who: 'shop technician',
  caution: 'roof',
});
