// Why: a bank shows its age under load, not at rest.
import { loadVoltsGood, loadVoltsWeak } from '../../standards/trade-practice/battery-voltages.ts';
import { isLeadAcid, mayBeTwelveVolt } from '../making/chemistry.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const houseBatteryLoad: Rule = {
  id: 'house-battery-load',
  asks: 'Does the lead-acid house bank hold under load?',
  why: 'A weak bank costs 800 to 6,000 dollars.',
  part: 'house_battery',
  aspect: 'load_voltage',
  appliesTo: (facts) => isLeadAcid(facts) && mayBeTwelveVolt(facts),
  look: '500 to 1,000 W by the inverter for ten minutes, then volts at the posts.',
  minutes: 14,
  steps: [
    { weight: 'defect', must: 'at least', limit: loadVoltsWeak },
    { weight: 'wear', must: 'at least', limit: loadVoltsGood },
  ],
  says: {
    meets: 'It held its volts under load.',
    fails: 'It sagged under load.',
    cannotTell: 'The reading is too near a limit, or is not volts.',
    notSeen: 'The bank has not been loaded.',
  },
  next: 'Charge fully and repeat; then test each battery by itself.',
  who: 'certified RV technician',
  caution: 'batteries',
  proofs: numberProofs(
    'V',
    [
      [11, 'fails', 'repair'],
      [11.5, 'fails', 'watch'],
      [11.9, 'fails', 'watch'],
      [12, 'meets', 'sound'],
      [12.4, 'meets', 'sound'],
      [12, 'cannot tell', 'watch', 0.1],
    ],
    [{ part: 'house_battery', aspect: 'chemistry', value: { is: 'text', text: 'flooded' } }],
  ),
};
