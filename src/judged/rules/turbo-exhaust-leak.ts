// Why: an exhaust leak under a bed is carbon monoxide.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const turboExhaustLeak = noneRule({
  id: 'turbo-exhaust-leak',
  asks: 'Does the exhaust leak at the turbo?',
  why: 'Carbon monoxide gets into the coach.',
  part: 'turbo_exhaust',
  aspect: 'leak',
  look: 'Start cold; listen for a tick; look for soot at the clamps.',
  minutes: 4,
  weight: 'defect',
  cite: practice('an exhaust is tight'),
  says: {
    meets: 'No exhaust leak was heard or seen at the turbo.',
    fails: 'The exhaust leaks at the turbo.',
    cannotTell: 'What was said does not settle it: listen on a cold start.',
    notSeen: 'Nobody has listened for an exhaust leak.',
  },
  next: 'Clamp or gasket before a long drive.',
  who: 'shop technician',
  caution: 'carbon-monoxide',
});
