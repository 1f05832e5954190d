// Why: freeze damage drips in the water bay.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const waterBayLeak = noneRule({
  id: 'water-bay-leak',
  asks: 'Does the water bay leak?',
  why: 'Freeze damage shows there.',
  part: 'water_bay',
  aspect: 'leak',
  look: 'Under pressure, with a light and a dry hand.',
  minutes: 5,
  weight: 'defect',
  cite: practice('a water bay is dry under pressure'),
  says: {
    meets: 'No leak in the water bay was found.',
    fails: 'There is a leak in the water bay.',
    cannotTell: 'What was said does not settle whether there is a leak in the water bay: look again.',
    notSeen: 'Nobody has looked for a leak in the water bay.',
  },
  next: 'Find it under pressure; mend before the tank is filled for a show.',
  who: 'certified RV technician',
});
