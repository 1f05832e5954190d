// Why: a basin that does not drain has a blocked vent or a frozen trap.
import { drainSlow, drainUsual } from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const basinDrain: Rule = {
  id: 'basin-drain',
  asks: 'Does the basin drain?',
  why: 'A frozen trap or a blocked vent.',
  part: 'bath_sink',
  aspect: 'drain_s',
  appliesTo: (facts, place) => facts.get('bath_sink', 'drain_s', place) !== undefined,
  expectedAt: () => [],
  look: 'Fill it, let it go, time it; look under.',
  minutes: 4,
  steps: [
    { weight: 'defect', must: 'at most', limit: drainSlow },
    { weight: 'wear', must: 'at most', limit: drainUsual },
  ],
  says: {
    meets: 'It drained.',
    fails: 'It drains slowly.',
    cannotTell: 'The time does not settle it.',
    notSeen: 'Nobody has timed it.',
  },
  next: 'Trap, then the vent on the roof.',
  who: 'certified RV technician',
  proofs: numberProofs('s', [
    [6, 'meets', 'sound'],
    [10, 'meets', 'sound'],
    [15, 'fails', 'watch'],
    [20, 'fails', 'watch'],
    [30, 'fails', 'repair'],
    [10, 'cannot tell', 'watch', 1],
  ]),
};
