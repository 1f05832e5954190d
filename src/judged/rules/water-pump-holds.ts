// Why: a pump that cycles with the taps shut has found a leak.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const waterPumpHolds = worksRule({
  id: 'water-pump-holds',
  asks: 'Does the water pump hold with the taps shut?',
  why: 'A pump that cycles has found a leak you have not.',
  part: 'water_pump',
  aspect: 'holds',
  look: 'Fill, run, shut the taps, listen ten minutes.',
  minutes: 12,
  weight: 'defect',
  weightOfPoor: 'defect',
  cite: practice('a pump holds with the taps shut'),
  says: {
    meets: 'The pump stayed off with the taps shut.',
    fails: 'The pump does not hold with the taps shut.',
    cannotTell: 'What was said does not settle it: listen ten minutes.',
    notSeen: 'Nobody has listened to the pump with the taps shut.',
  },
  next: 'Find the leak before you change the pump.',
  who: 'certified RV technician',
});
