// Why: the floor shows water with a meter long before it shows it to the eye.
import { moistureRule } from '../making/moisture-rule.ts';

export const floorMoisture = moistureRule({
  id: 'floor-moisture',
  asks: 'Is the floor dry?',
  why: 'Damp floor is rot in the making.',
  part: 'floor_main',
  where: 'The floor',
  look: 'Pin meter at the door, the galley, the bath and along the outer walls.',
  minutes: 6,
});
