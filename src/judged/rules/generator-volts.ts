// Why: a generator is judged by its volts under load.
import {
  genVoltsHigh,
  genVoltsLeast,
  genVoltsStop,
  genVoltsWatch,
} from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const generatorVolts: Rule = {
  id: 'generator-volts',
  asks: 'Are the volts right under load?',
  why: 'Repairs run from 1,500 to 6,000 dollars.',
  part: 'generator_load_run',
  aspect: 'volts',
  appliesTo: (facts) =>
    facts.all('generator_load_run', 'volts').length > 0 ||
    facts.all('generator', 'volts_loaded').length === 0,
  look: 'Cold and hot, with air conditioners on; meter at an outlet.',
  minutes: 12,
  steps: [
    { weight: 'danger', must: 'at most', limit: genVoltsStop },
    { weight: 'defect', must: 'at least', limit: genVoltsLeast },
    { weight: 'defect', must: 'at most', limit: genVoltsHigh },
    { weight: 'wear', must: 'at least', limit: genVoltsWatch },
  ],
  says: {
    meets: 'The volts were right under load.',
    fails: 'The volts are not right under load.',
    cannotTell: 'The reading is too near a limit, or is not volts.',
    notSeen: 'The volts under load have not been measured.',
  },
  next: 'Shut it off if the volts are high; governor, regulator, or an hour at load to burn it clean.',
  who: 'certified RV technician',
  caution: 'carbon-monoxide',
  proofs: numberProofs('V', [
    [100, 'fails', 'repair'],
    [108, 'fails', 'watch'],
    [112, 'fails', 'watch'],
    [115, 'meets', 'sound'],
    [120, 'meets', 'sound'],
    [126, 'meets', 'sound'],
    [129, 'fails', 'repair'],
    [132, 'fails', 'repair'],
    [135, 'fails', 'stop'],
    [115, 'cannot tell', 'watch', 1],
    [126, 'cannot tell', 'watch', 1],
  ]),
};
