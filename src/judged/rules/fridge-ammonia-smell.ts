// Why: ammonia in the room is the refrigerator leaking.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const fridgeAmmoniaSmell = noneRule({
  id: 'fridge-ammonia-smell',
  asks: 'Does the refrigerator smell of ammonia?',
  why: 'A cooling unit that leaks burns coaches, and the gas hurts.',
  part: 'refrigerator',
  aspect: 'ammonia_smell',
  also: ['smell'],
  look: 'Smell on first opening.',
  minutes: 1,
  weight: 'danger',
  cite: practice('an ammonia smell is a leaking cooling unit'),
  says: {
    meets: 'No ammonia was smelled.',
    fails: 'It smells of ammonia.',
    cannotTell: 'What was said does not settle it.',
    notSeen: 'Nobody has said whether it smells.',
  },
  next: 'Shut it off, air the room, leave it off; a licensed technician decides.',
  who: 'certified RV technician',
  caution: 'ammonia',
});
