// Why: an extinguisher that has lost its pressure is a paperweight.
import { extinguisherCitation } from '../../standards/us-code-of-federal-regulations/49-cfr-393-other.ts';
import { worksRule } from '../making/works-rule.ts';

export const extinguisherGauge = worksRule({
  id: 'extinguisher-gauge',
  asks: "Is the extinguisher's gauge in the green?",
  why: 'It is for the first two minutes of a fire.',
  part: 'extinguisher',
  aspect: 'gauge_ok',
  look: 'Gauge, pin, rating, place by the exit.',
  minutes: 1,
  weight: 'unlawful',
  cite: extinguisherCitation,
  says: {
    meets: 'The gauge stood in the green.',
    fails: 'The gauge does not stand in the green.',
    cannotTell: 'What was said does not settle it: read the gauge.',
    notSeen: 'Nobody has read the gauge.',
  },
  next: 'Recharge or change it.',
  who: 'shop technician',
});
