// Why: a slow leak shreds duals.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const valveStemLeak = noneRule({
  id: 'valve-stem-leak',
  asks: 'Do valve stems leak?',
  why: 'A slow leak runs a dual flat.',
  part: 'valve_stems',
  aspect: 'leak',
  look: 'Leak spray on stems and extenders.',
  minutes: 3,
  weight: 'defect',
  cite: practice('valve stems are tight'),
  says: {
    meets: 'No leak at a valve stem was found.',
    fails: 'There is a leak at a valve stem.',
    cannotTell: 'What was said does not settle whether there is a leak at a valve stem: look again.',
    notSeen: 'Nobody has looked for a leak at a valve stem.',
  },
  next: 'Metal stems, braced extenders.',
  who: 'tire shop',
  caution: 'tires',
});
