// Why: city pressure finds every old fitting.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const cityWaterLeak = noneRule({
  id: 'city-water-leak',
  asks: 'Does it leak on city water?',
  why: 'Over 60 psi breaks old plastic lines.',
  part: 'city_water',
  aspect: 'leak',
  look: '40 to 55 psi by a regulator; watch five minutes.',
  minutes: 6,
  weight: 'defect',
  cite: practice('plumbing holds city pressure for five minutes'),
  says: {
    meets: 'No leak on city water was found.',
    fails: 'There is a leak on city water.',
    cannotTell: 'What was said does not settle whether there is a leak on city water: look again.',
    notSeen: 'Nobody has looked for a leak on city water.',
  },
  next: 'Find it before walls and floor get wet.',
  who: 'certified RV technician',
});
