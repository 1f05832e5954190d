// Why: lamps out behind a towed car are out for everybody.
import { lampCitation } from '../../standards/us-code-of-federal-regulations/49-cfr-393-other.ts';
import { worksRule } from '../making/works-rule.ts';

export const towPlugWorks = worksRule({
  id: 'tow-plug-works',
  asks: 'Does every function of the tow plug work?',
  why: 'Lamps are out behind what is towed.',
  part: 'tow_plug',
  aspect: 'pins_ok',
  also: ['operates'],
  look: 'A tester in the plug while the lamps run.',
  minutes: 4,
  weight: 'unlawful',
  cite: lampCitation,
  says: {
    meets: 'The tow plug did its work when tried.',
    fails: 'The tow plug did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the tow plug works: try again.',
    notSeen: 'Nobody has tried the tow plug.',
  },
  next: 'Mend before anything is towed.',
  who: 'shop technician',
});
