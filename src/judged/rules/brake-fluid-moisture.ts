// Why: water in brake fluid boils on the grade.
import { brakeFluidDamp, brakeFluidWet } from '../../standards/trade-practice/engine-and-chassis.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const brakeFluidMoisture: Rule = {
  id: 'brake-fluid-moisture',
  asks: 'How much water is in the brake fluid?',
  why: 'It boils on a long grade and the pedal goes.',
  part: 'brake_fluid',
  aspect: 'moisture',
  look: 'Tester in the reservoir.',
  minutes: 2,
  steps: [
    { weight: 'defect', must: 'less than', limit: brakeFluidWet },
    { weight: 'wear', must: 'less than', limit: brakeFluidDamp },
  ],
  says: {
    meets: 'The fluid was dry enough.',
    fails: 'There is water in the fluid.',
    cannotTell: 'The reading is too near a limit, or is not a percentage.',
    notSeen: 'The brake fluid has not been tested.',
  },
  next: 'Change the fluid.',
  who: 'qualified brake technician',
  proofs: numberProofs('%', [
    [0.5, 'meets', 'sound'],
    [1.9, 'meets', 'sound'],
    [2, 'fails', 'watch'],
    [2.9, 'fails', 'watch'],
    [3, 'fails', 'repair'],
    [4, 'fails', 'repair'],
    [2, 'cannot tell', 'watch', 0.5],
  ]),
};
