// Why: rubber ages whether it rolls or not, and a tire with deep tread may be the oldest part of a coach.
import { tireAgeLook, tireAgeOut, tireAgePlan } from '../../standards/trade-practice/tires.ts';
import { numberProofs } from '../making/proofs.ts';
import { tirePlaces } from '../making/tire-places.ts';
import type { Rule } from '../rule.ts';

export const tireAge: Rule = {
  id: 'tire-age',
  asks: 'How old are the tires?',
  why: 'Age kills the tires of a coach before tread does.',
  part: 'tire',
  aspect: 'age',
  expectedAt: tirePlaces,
  look: 'Read the last four digits of the identification number on the sidewall, week and year. If this side has none, read the other side.',
  minutes: 2,
  steps: [
    { weight: 'danger', must: 'at most', limit: tireAgeOut },
    { weight: 'defect', must: 'at most', limit: tireAgePlan },
    { weight: 'wear', must: 'at most', limit: tireAgeLook },
  ],
  says: {
    meets: 'Young enough that age alone is no reason to change it.',
    fails: 'Old enough that age is a reason to look closely, plan or change it.',
    cannotTell: 'The age is too near a limit, or only told: read the date code.',
    notSeen: 'The date code has not been read, so the age is not known.',
  },
  next: 'Over ten years: do not drive it far, change it. Over seven: plan a set and tell the buyer the date code.',
  who: 'tire shop',
  caution: 'tires',
  proofs: numberProofs('a', [
    [2, 'meets', 'sound'],
    [5, 'meets', 'sound'],
    [5.1, 'fails', 'watch'],
    [7, 'fails', 'watch'],
    [7.1, 'fails', 'repair'],
    [10, 'fails', 'repair'],
    [10.1, 'fails', 'stop'],
    [16, 'fails', 'stop'],
    [5, 'cannot tell', 'watch', 0.02],
    [10, 'cannot tell', 'stop', 0.5],
    [3, 'meets', 'sound', 0.5],
  ]),
};
