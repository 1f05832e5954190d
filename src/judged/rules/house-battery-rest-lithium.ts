// Why: a lithium bank rests higher and flatter; its volts say little, and the rule says so.
import { lithiumRestGood, lithiumRestLow } from '../../standards/trade-practice/battery-voltages.ts';
import { isLithium, mayBeTwelveVolt } from '../making/chemistry.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const houseBatteryRestLithium: Rule = {
  id: 'house-battery-rest-lithium',
  asks: 'Is the lithium house bank charged?',
  why: 'House power is what owners use the coach for.',
  part: 'house_battery',
  aspect: 'rest_voltage',
  appliesTo: (facts) => isLithium(facts) && mayBeTwelveVolt(facts),
  look: 'Two hours with nothing charging and nothing on, then a meter at the posts; read the state of charge off its own monitor.',
  minutes: 4,
  steps: [
    { weight: 'defect', must: 'at least', limit: lithiumRestLow },
    { weight: 'wear', must: 'at least', limit: lithiumRestGood },
  ],
  says: {
    meets: 'At rest it stood as a charged lithium bank does. Volts say nothing of its health.',
    fails: 'At rest it stood low for a lithium bank: nearly empty, or worn.',
    cannotTell: 'The curve is too flat for this reading to settle it: read its own monitor.',
    notSeen: 'The volts at rest have not been measured.',
  },
  next: 'Charge it fully, read its monitor, then run a load for half an hour.',
  who: 'certified RV technician',
  caution: 'batteries',
  proofs: numberProofs(
    'V',
    [
      [12.5, 'fails', 'repair'],
      [12.9, 'fails', 'watch'],
      [13.1, 'fails', 'watch'],
      [13.2, 'meets', 'sound'],
      [13.4, 'meets', 'sound'],
      [13.2, 'cannot tell', 'watch', 0.05],
      [12.9, 'fails', 'watch', 0.05],
    ],
    [{ part: 'house_battery', aspect: 'chemistry', value: { is: 'text', text: 'lithium iron phosphate' } }],
  ),
};
