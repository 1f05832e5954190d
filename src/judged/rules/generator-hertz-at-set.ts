// Why: a generator is judged by its hertz under load, here as said of the set itself.
import {
  genHertzHigh,
  genHertzHighWatch,
  genHertzLeast,
  genHertzWatch,
} from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const generatorHertzAtSet: Rule = {
  id: 'generator-hertz-at-set',
  asks: 'Are the hertz right under load?',
  why: 'Repairs run from 1,500 to 6,000 dollars.',
  part: 'generator',
  aspect: 'hertz_loaded',
  appliesTo: (facts, place) => facts.get('generator', 'hertz_loaded', place) !== undefined,
  expectedAt: () => [],
  look: 'Cold and hot, with air conditioners on; meter at an outlet.',
  minutes: 12,
  steps: [
    { weight: 'defect', must: 'at least', limit: genHertzLeast },
    { weight: 'defect', must: 'at most', limit: genHertzHigh },
    { weight: 'wear', must: 'at least', limit: genHertzWatch },
    { weight: 'wear', must: 'at most', limit: genHertzHighWatch },
  ],
  says: {
    meets: 'The hertz were right under load.',
    fails: 'The hertz are not right under load.',
    cannotTell: 'The reading is too near a limit, or is not hertz.',
    notSeen: 'The hertz under load have not been measured.',
  },
  next: 'Shut it off if the volts are high; governor, regulator, or an hour at load to burn it clean.',
  who: 'certified RV technician',
  caution: 'carbon-monoxide',
  proofs: numberProofs('Hz', [
    [55, 'fails', 'repair'],
    [57, 'fails', 'watch'],
    [58, 'fails', 'watch'],
    [58.5, 'meets', 'sound'],
    [60, 'meets', 'sound'],
    [61.5, 'meets', 'sound'],
    [62, 'fails', 'watch'],
    [63, 'fails', 'watch'],
    [64, 'fails', 'repair'],
    [58.5, 'cannot tell', 'watch', 0.2],
  ]),
};
