// Why: recalls of chassis and coach are filed apart, and buyers ask for both; this is the coach.
import { noOpenRecall } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const recallCoachOpen: Rule = {
  id: 'recall-coach-open',
  asks: 'Is a recall of the coach open?',
  why: 'Buyers ask; some states and lenders forbid a sale.',
  part: 'recall_status',
  aspect: 'open_coach',
  look: 'Look up the coach serial on the day.',
  minutes: 4,
  steps: [{ weight: 'defect', must: 'at most', limit: noOpenRecall }],
  says: {
    meets: 'No recall of the coach was open on the day it was looked up.',
    fails: 'A recall of the coach is open.',
    cannotTell: 'It was only told, or not counted: look it up.',
    notSeen: 'Nobody has looked up recalls of the coach.',
  },
  next: 'Book the remedy, or disclose it; a notice not to drive is obeyed at once.',
  who: 'office',
  proofs: numberProofs('1', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'repair'],
    [3, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 1],
  ]),
};
