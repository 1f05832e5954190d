// Why: the slide floor shows water with a meter long before it shows it to the eye.
import { moistureRule } from '../making/moisture-rule.ts';

export const slideFloorMoisture = moistureRule({
  id: 'slide-floor-moisture',
  asks: 'Is the edge of the slide floor dry?',
  why: 'Rot of a slide floor shows at its outer edge first.',
  part: 'slide_floor_out',
  where: 'The slide floor',
  look: 'From below, pin meter along the outer edge and corners of the slide floor.',
  minutes: 6,
  caution: 'slides',
});
