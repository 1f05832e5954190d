// Why: a swollen battery has been cooked.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const houseBatterySwelling = noneRule({
  id: 'house-battery-swelling',
  asks: 'Is a house battery swollen?',
  why: 'It can burst, burn or gas.',
  part: 'house_battery',
  aspect: 'swelling',
  look: 'From the front, without touching.',
  minutes: 1,
  weight: 'danger',
  cite: practice('a swollen battery is taken out of use'),
  says: {
    meets: 'No battery was swollen.',
    fails: 'A battery is swollen.',
    cannotTell: 'What was said does not settle it: look, do not touch.',
    notSeen: 'Nobody has looked whether a battery is swollen.',
  },
  next: 'Stop charging it; trained people take it out.',
  who: 'certified RV technician',
  caution: 'batteries',
});
