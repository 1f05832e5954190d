// Why: appliances are made for eleven inches.
import {
  runningHigh,
  runningLeast,
  runningLow,
  runningMost,
} from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const lpRunning: Rule = {
  id: 'lp-running',
  asks: 'What does the gas regulator give under load?',
  why: 'Appliances burn badly on the wrong pressure.',
  part: 'lp_regulator',
  aspect: 'running',
  look: 'A licensed person, manometer, about half the load on.',
  minutes: 15,
  steps: [
    { weight: 'defect', must: 'at least', limit: runningLow },
    { weight: 'defect', must: 'at most', limit: runningHigh },
    { weight: 'wear', must: 'at least', limit: runningLeast },
    { weight: 'wear', must: 'at most', limit: runningMost },
  ],
  says: {
    meets: 'It gave the pressure appliances are made for.',
    fails: 'It gives too much or too little pressure.',
    cannotTell: 'The reading is too near a limit, or is not a pressure.',
    notSeen: 'Running pressure has not been measured.',
  },
  next: 'Adjusting or changing it is licensed work.',
  who: 'licensed LP gas technician',
  caution: 'lp-gas',
  proofs: numberProofs("[in_i'H2O]", [
    [9, 'fails', 'repair'],
    [10, 'fails', 'watch'],
    [10.2, 'fails', 'watch'],
    [10.5, 'meets', 'sound'],
    [11, 'meets', 'sound'],
    [11.5, 'meets', 'sound'],
    [11.8, 'fails', 'watch'],
    [12, 'fails', 'watch'],
    [12.4, 'fails', 'repair'],
    [10.5, 'cannot tell', 'watch', 0.1],
  ]),
};
