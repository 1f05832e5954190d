// Why: the cab-over shows water with a meter long before it shows it to the eye.
import { moistureRule } from '../making/moisture-rule.ts';

export const cabOverMoisture = moistureRule({
  id: 'cab-over-moisture',
  asks: 'Is the cab-over dry?',
  why: 'It is the usual place where a class C rots.',
  part: 'cab_over',
  where: 'The cab-over',
  look: 'Press and pin-meter the nose, the corners and under the mattress.',
  minutes: 6,
  caution: 'roof',
});
