// Why: a step that sways is a fall.
import { stepSwayOut, stepSwayWatch } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const entryStepSway: Rule = {
  id: 'entry-step-sway',
  asks: 'Is the entry step firm?',
  why: 'People fall off a step that sways.',
  part: 'entry_step',
  aspect: 'sway',
  appliesTo: (facts, place) => facts.get('entry_step', 'sway', place) !== undefined,
  expectedAt: () => [],
  look: 'Stand on it and watch it move against a ruler.',
  minutes: 2,
  steps: [
    { weight: 'defect', must: 'at most', limit: stepSwayOut },
    { weight: 'wear', must: 'at most', limit: stepSwayWatch },
  ],
  says: {
    meets: 'The step was firm.',
    fails: 'The step sways.',
    cannotTell: 'How far it sways does not settle it.',
    notSeen: 'The sway of the step has not been measured.',
  },
  next: 'Pins and bushings, or a new step.',
  who: 'shop technician',
  proofs: numberProofs('[in_i]', [
    [0.5, 'meets', 'sound'],
    [1, 'meets', 'sound'],
    [1.5, 'fails', 'watch'],
    [2, 'fails', 'watch'],
    [2.5, 'fails', 'repair'],
    [1, 'cannot tell', 'watch', 0.2],
  ]),
};
