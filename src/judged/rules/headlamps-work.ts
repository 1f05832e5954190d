// Why: a coach is driven home in the dark.
import { lampCitation } from '../../standards/us-code-of-federal-regulations/49-cfr-393-other.ts';
import { worksRule } from '../making/works-rule.ts';

export const headlampsWork = worksRule({
  id: 'headlamps-work',
  asks: 'Do the headlamps work?',
  why: 'The law asks for it, and the buyer drives home in the dark.',
  part: 'headlamps',
  aspect: 'operates',
  look: 'Low and high beam, both sides, with a helper or a wall.',
  minutes: 2,
  weight: 'unlawful',
  cite: lampCitation,
  says: {
    meets: 'The headlamps did their work when tried.',
    fails: 'The headlamps did not work when tried, or not as they should.',
    cannotTell: 'What was said does not settle whether the headlamps work: try again.',
    notSeen: 'Nobody has tried the headlamps.',
  },
  next: 'Bulb, ground or switch before it is driven.',
  who: 'shop technician',
});
