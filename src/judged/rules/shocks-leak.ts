// Why: a wet shock does nothing.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const shocksLeak = noneRule({
  id: 'shocks-leak',
  asks: 'Do the shocks leak?',
  why: 'A wet shock lets the coach float and porpoise.',
  part: 'shocks',
  aspect: 'leak',
  look: 'Oil on the body, rubber at the mounts.',
  minutes: 4,
  weight: 'defect',
  cite: practice('a shock is dry'),
  says: {
    meets: 'No oil was seen on the shocks.',
    fails: 'A shock leaks.',
    cannotTell: 'What was said does not settle it: look for oil.',
    notSeen: 'Nobody has looked at the shocks.',
  },
  next: 'Change them by the axle.',
  who: 'heavy-vehicle technician',
  caution: 'lifting',
});
