// Why: brakes are what they do from 20 mph; for a coach over 10,000 lb.
import { stopHeavyWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { stopHeavy } from '../../standards/us-code-of-federal-regulations/49-cfr-393-52.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const stopDistanceHeavy: Rule = {
  id: 'stop-distance-heavy',
  asks: 'In how many feet does it stop from 20 mph?',
  why: 'It is the brakes.',
  part: 'road_test_drive',
  aspect: 'stop_ft',
  appliesTo: (facts, place) =>
    facts.kind !== 'class-b' && facts.get('road_test_drive', 'stop_ft', place) !== undefined,
  expectedAt: () => [],
  look: 'Trained driver, level dry empty lot, from 20 mph, tape.',
  minutes: 5,
  steps: [
    { weight: 'danger', must: 'at most', limit: stopHeavy },
    { weight: 'wear', must: 'at most', limit: stopHeavyWatch },
  ],
  says: {
    meets: 'It stopped in the distance that is asked for.',
    fails: 'It does not stop in the distance that is asked for.',
    cannotTell: 'The distance is too near a limit, or is not a distance: do it again.',
    notSeen: 'Nobody has measured it.',
  },
  next: 'Brakes before it is driven.',
  who: 'qualified brake technician',
  caution: 'driving',
  proofs: numberProofs('[ft_i]', [
    [28, 'meets', 'sound'],
    [30, 'meets', 'sound'],
    [33, 'fails', 'watch'],
    [35, 'fails', 'watch'],
    [36, 'fails', 'stop'],
    [35, 'cannot tell', 'stop', 1],
  ]),
};
