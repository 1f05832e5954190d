// Why: a leak at a fuel line is a fire.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const fuelLineLeak = noneRule({
  id: 'fuel-line-leak',
  asks: 'Is there a leak at a fuel line?',
  why: 'It is a fire waiting.',
  part: 'fuel_lines',
  aspect: 'leak',
  look: 'With a light and a dry rag.',
  minutes: 4,
  weight: 'danger',
  cite: practice('it is dry and tight'),
  says: {
    meets: 'No leak at a fuel line was found.',
    fails: 'There is a leak at a fuel line.',
    cannotTell: 'What was said does not settle whether there is a leak at a fuel line: look again.',
    notSeen: 'Nobody has looked for a leak at a fuel line.',
  },
  next: 'Find and mend it before it is driven.',
  who: 'heavy-vehicle technician',
  caution: 'fuel',
});
