// Why: a water heater has two ways to heat; this is electric power.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const waterHeaterElectric = worksRule({
  id: 'water-heater-electric',
  asks: 'Does the water heater heat on electric power?',
  why: 'Owners use both.',
  part: 'water_heater_run',
  aspect: 'electric_ok',
  look: 'Never switch on an empty tank. Time it to hot.',
  minutes: 6,
  weight: 'defect',
  cite: practice('it heats on each source it was made for'),
  says: {
    meets: 'The water heater on electric power did its work when tried.',
    fails: 'The water heater on electric power did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the water heater on electric power works: try again.',
    notSeen: 'Nobody has tried the water heater on electric power.',
  },
  next: 'Element and its breaker, or igniter and burner.',
  who: 'certified RV technician',
  caution: 'hot-water',
});
