// Why: a water heater has two ways to heat; this is gas.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const waterHeaterGas = worksRule({
  id: 'water-heater-gas',
  asks: 'Does the water heater heat on gas?',
  why: 'Owners use both.',
  part: 'water_heater_run',
  aspect: 'gas_ok',
  look: 'Never switch on an empty tank. Time it to hot.',
  minutes: 6,
  weight: 'defect',
  cite: practice('it heats on each source it was made for'),
  says: {
    meets: 'The water heater on gas did its work when tried.',
    fails: 'The water heater on gas did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the water heater on gas works: try again.',
    notSeen: 'Nobody has tried the water heater on gas.',
  },
  next: 'Element and its breaker, or igniter and burner.',
  who: 'certified RV technician',
  caution: 'hot-water',
});
