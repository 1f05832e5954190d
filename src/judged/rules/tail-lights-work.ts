// Why: lamps out behind are not seen from the seat.
import { lampCitation } from '../../standards/us-code-of-federal-regulations/49-cfr-393-other.ts';
import { worksRule } from '../making/works-rule.ts';

export const tailLightsWork = worksRule({
  id: 'tail-lights-work',
  asks: 'Do stop, tail, turn and reverse lamps work?',
  why: 'The driver behind sees nothing else.',
  part: 'tail_lights',
  aspect: 'operates',
  look: 'Stop, tail, turn, reverse and plate lamps, with a helper.',
  minutes: 2,
  weight: 'unlawful',
  cite: lampCitation,
  says: {
    meets: 'The rear lamps did their work when tried.',
    fails: 'The rear lamps did not work when tried, or not as they should.',
    cannotTell: 'What was said does not settle whether the rear lamps work: try again.',
    notSeen: 'Nobody has tried the rear lamps.',
  },
  next: 'Mend before it is driven; with no stop lamps it does not move.',
  who: 'shop technician',
});
