// Why: recalls of chassis and coach are filed apart, and buyers ask for both; this is the chassis.
import { noOpenRecall } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const recallChassisOpen: Rule = {
  id: 'recall-chassis-open',
  asks: 'Is a recall of the chassis open?',
  why: 'Buyers ask; some states and lenders forbid a sale.',
  part: 'recall_status',
  aspect: 'open_chassis',
  look: 'Look up the VIN on the day.',
  minutes: 4,
  steps: [{ weight: 'defect', must: 'at most', limit: noOpenRecall }],
  says: {
    meets: 'No recall of the chassis was open on the day it was looked up.',
    fails: 'A recall of the chassis is open.',
    cannotTell: 'It was only told, or not counted: look it up.',
    notSeen: 'Nobody has looked up recalls of the chassis.',
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
