// Why: a leak at the fuel tank is a fire.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const fuelTankLeak = noneRule({
  id: 'fuel-tank-leak',
  asks: 'Is there a leak at the fuel tank?',
  why: 'It is a fire waiting.',
  part: 'fuel_tank',
  aspect: 'leak',
  look: 'With a light and a dry rag.',
  minutes: 4,
  weight: 'danger',
  cite: practice('it is dry and tight'),
  says: {
    meets: 'No leak at the fuel tank was found.',
    fails: 'There is a leak at the fuel tank.',
    cannotTell: 'What was said does not settle whether there is a leak at the fuel tank: look again.',
    notSeen: 'Nobody has looked for a leak at the fuel tank.',
  },
  next: 'Find and mend it before it is driven.',
  who: 'heavy-vehicle technician',
  caution: 'fuel',
});
