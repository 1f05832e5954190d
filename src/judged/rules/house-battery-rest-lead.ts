// Why: volts at rest are the first look at a lead-acid house bank.
import { restFull, restHalf } from '../../standards/trade-practice/battery-voltages.ts';
import { isLeadAcid, mayBeTwelveVolt } from '../making/chemistry.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const houseBatteryRestLead: Rule = {
  id: 'house-battery-rest-lead',
  asks: 'Is the lead-acid house bank charged and holding?',
  why: 'House power is what owners use the coach for.',
  part: 'house_battery',
  aspect: 'rest_voltage',
  appliesTo: (facts) => isLeadAcid(facts) && mayBeTwelveVolt(facts),
  look: 'Two hours with nothing charging and nothing on, then a meter at the posts.',
  minutes: 4,
  steps: [
    { weight: 'defect', must: 'at least', limit: restHalf },
    { weight: 'wear', must: 'at least', limit: restFull },
  ],
  says: {
    meets: 'At rest it stood as a charged lead-acid bank does.',
    fails: 'At rest it stood lower than a charged lead-acid bank does.',
    cannotTell: 'The volts are too near a limit, or are not volts: rest it two hours and measure again.',
    notSeen: 'The volts at rest have not been measured.',
  },
  next: 'Charge it fully, rest it, measure again; if it is still low, load-test each battery.',
  who: 'certified RV technician',
  caution: 'batteries',
  proofs: numberProofs(
    'V',
    [
      [11.8, 'fails', 'repair'],
      [12.1, 'fails', 'repair'],
      [12.2, 'fails', 'watch'],
      [12.5, 'fails', 'watch'],
      [12.6, 'meets', 'sound'],
      [12.8, 'meets', 'sound'],
      [12.2, 'fails', 'watch', 0.05],
      [12.6, 'cannot tell', 'watch', 0.05],
      [12.9, 'meets', 'sound', 0.05],
    ],
    [{ part: 'house_battery', aspect: 'chemistry', value: { is: 'text', text: 'AGM' } }],
  ),
};
