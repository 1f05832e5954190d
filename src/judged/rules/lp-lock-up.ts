// Why: too much pressure burns every appliance.
import { regulatorLockUp } from '../../standards/national-fire-protection-association/lp-tests.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const lpLockUp: Rule = {
  id: 'lp-lock-up',
  asks: 'What does the gas regulator lock up at?',
  why: 'Overpressure burns appliances.',
  part: 'lp_regulator',
  aspect: 'lockup',
  look: 'A licensed person, manometer, everything off.',
  minutes: 15,
  steps: [{ weight: 'danger', must: 'at most', limit: regulatorLockUp }],
  says: {
    meets: 'It locked up within the limit.',
    fails: 'It locks up too high.',
    cannotTell: 'The reading is too near the limit, or is not a pressure.',
    notSeen: 'Lock-up has not been measured.',
  },
  next: 'Close the tank; change the regulator.',
  who: 'licensed LP gas technician',
  caution: 'lp-gas',
  proofs: numberProofs("[in_i'H2O]", [
    [12, 'meets', 'sound'],
    [14, 'meets', 'sound'],
    [14.5, 'fails', 'stop'],
    [14, 'cannot tell', 'stop', 0.3],
  ]),
};
