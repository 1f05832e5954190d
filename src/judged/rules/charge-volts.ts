// Why: many dead banks are a dead charger.
import { chargeLeast, chargeMost, chargeNone } from '../../standards/trade-practice/battery-voltages.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const chargeVolts: Rule = {
  id: 'charge-volts',
  asks: 'Does the charger charge?',
  why: 'Many dead banks are a dead charger.',
  part: 'inverter_charger',
  aspect: 'charge_volts',
  look: 'Shore power on, meter at the battery.',
  minutes: 5,
  steps: [
    { weight: 'defect', must: 'at least', limit: chargeNone },
    { weight: 'defect', must: 'at most', limit: chargeMost },
    { weight: 'wear', must: 'at least', limit: chargeLeast },
  ],
  says: {
    meets: 'It charged.',
    fails: 'It does not charge as it should.',
    cannotTell: 'The reading is too near a limit, or is not volts.',
    notSeen: 'Charging volts have not been measured.',
  },
  next: 'Breaker, settings for the kind of battery, then the charger.',
  who: 'certified RV technician',
  caution: 'shore-power',
  proofs: numberProofs('V', [
    [12.4, 'fails', 'repair'],
    [12.9, 'fails', 'watch'],
    [13.1, 'fails', 'watch'],
    [13.2, 'meets', 'sound'],
    [14.4, 'meets', 'sound'],
    [15, 'meets', 'sound'],
    [15.2, 'fails', 'repair'],
    [13.2, 'cannot tell', 'watch', 0.1],
  ]),
};
