// Why: a frayed belt tears when it is needed.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const seatBeltsFrayed = noneRule({
  id: 'seat-belts-frayed',
  asks: 'Is a seat belt frayed?',
  why: 'It tears when it is needed.',
  part: 'seat_belts',
  aspect: 'frayed',
  look: 'Every belt all the way out; lock, pull, read the date.',
  minutes: 5,
  weight: 'unlawful',
  cite: practice('belts are whole and lock'),
  says: {
    meets: 'No belt was frayed.',
    fails: 'A belt is frayed.',
    cannotTell: 'What was said does not settle it: pull each out.',
    notSeen: 'Nobody has pulled out the belts.',
  },
  next: 'Change it; the seat is not used until then.',
  who: 'shop technician',
});
