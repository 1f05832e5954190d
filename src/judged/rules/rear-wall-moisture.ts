// Why: the rear wall shows water with a meter long before it shows it to the eye.
import { moistureRule } from '../making/moisture-rule.ts';

export const rearWallMoisture = moistureRule({
  id: 'rear-wall-moisture',
  asks: 'Is the rear wall dry inside?',
  why: 'The rear cap seam is where coaches leak unseen.',
  part: 'rear_wall_inside',
  where: 'The rear wall',
  look: 'Pin meter at the corners of the rear cap seam, inside.',
  minutes: 6,
});
