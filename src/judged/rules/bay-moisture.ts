// Why: the bay shows water with a meter long before it shows it to the eye.
import { moistureRule } from '../making/moisture-rule.ts';

export const bayMoisture = moistureRule({
  id: 'bay-moisture',
  asks: 'Are the bay walls and floor dry?',
  why: 'Water in a bay comes from a wall or a tank.',
  part: 'bay_moisture',
  where: 'The bay',
  look: 'Pin meter in bay walls and floor; compare with a dry place.',
  minutes: 6,
});
