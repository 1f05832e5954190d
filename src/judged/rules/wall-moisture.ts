// Why: the inside walls shows water with a meter long before it shows it to the eye.
import { moistureRule } from '../making/moisture-rule.ts';

export const wallMoisture = moistureRule({
  id: 'wall-moisture',
  asks: 'Are the inside walls dry?',
  why: 'A leak is priced from 2,000 to 30,000 dollars.',
  part: 'wall_stains',
  where: 'The inside walls',
  look: 'Press, then pin meter round windows, corners, cap seams and slides; compare with a dry spot of the same wall.',
  minutes: 6,
  caution: 'sewage',
});
