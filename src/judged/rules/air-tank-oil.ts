// Why: oil in an air tank is the compressor coming apart.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const airTankOil = noneRule({
  id: 'air-tank-oil',
  asks: 'Does oil come out of the air tanks?',
  why: 'Oil ruins every valve of the brakes.',
  part: 'air_tanks',
  aspect: 'oil_in_drain',
  look: 'Cold: drain each tank into a bucket.',
  minutes: 5,
  weight: 'defect',
  cite: practice('an air tank drains air only'),
  says: {
    meets: 'No oil came out of the air tanks.',
    fails: 'Oil came out of an air tank.',
    cannotTell: 'What was said does not settle it: drain into a bucket.',
    notSeen: 'Nobody has drained the air tanks.',
  },
  next: 'Compressor and dryer; then look at every valve.',
  who: 'qualified brake technician',
  caution: 'air-brakes',
});
