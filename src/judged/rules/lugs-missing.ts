// Why: two nuts gone and the wheel follows.
import { noLugMissing, oneLugMissing } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const lugsMissing: Rule = {
  id: 'lugs-missing',
  asks: 'Are wheel nuts missing or loose?',
  why: 'The wheel comes off.',
  part: 'wheels_lugs',
  aspect: 'missing',
  look: 'Every nut and stud; rust trails; torque after wheels have been on.',
  minutes: 4,
  steps: [
    { weight: 'danger', must: 'at most', limit: oneLugMissing },
    { weight: 'defect', must: 'at most', limit: noLugMissing },
  ],
  says: {
    meets: 'Every nut was there.',
    fails: 'Nuts are missing or loose.',
    cannotTell: 'They were not counted: count them.',
    notSeen: 'Nobody has counted the wheel nuts.',
  },
  next: 'Do not drive it with more than one missing; find the stretched or cracked studs.',
  who: 'heavy-vehicle technician',
  caution: 'lifting',
  proofs: numberProofs('1', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'repair'],
    [2, 'fails', 'stop'],
    [3, 'fails', 'stop'],
    [1, 'cannot tell', 'stop', 1],
  ]),
};
