// Why: a tire's tread is read in three grooves, and the front axle has a stricter floor: six rules of one shape.
import type { Facts } from '../../known/facts.ts';
import {
  treadOtherSoon,
  treadOtherWatch,
  treadSteerSoon,
  treadSteerWatch,
} from '../../standards/trade-practice/tires.ts';
import { treadOther, treadSteer } from '../../standards/us-code-of-federal-regulations/49-cfr-393-75.ts';
import type { Rule } from '../rule.ts';
import { numberProofs } from './proofs.ts';
import { isSteerPlace, otherTirePlaces, steerTirePlaces } from './tire-places.ts';

type Groove = 'outer' | 'mid' | 'inner';

const grooveName: Readonly<Record<Groove, string>> = {
  outer: 'outer groove',
  mid: 'middle groove',
  inner: 'inner groove',
};

const isMotorized = (facts: Facts): boolean =>
  facts.kind !== 'fifth-wheel' && facts.kind !== 'travel-trailer';

/** The shoulders are asked for only where somebody has read them; the middle is asked for at every tire. */
export function treadRule(axle: 'steer' | 'other', groove: Groove): Rule {
  const aspect = `tread_${groove}`;
  const isSteer = axle === 'steer';
  const name = grooveName[groove];
  const here = (facts: Facts, place: string | undefined): boolean =>
    isSteer
      ? isMotorized(facts) && (place === undefined || isSteerPlace(place))
      : place === undefined || !isMotorized(facts) || !isSteerPlace(place);
  return {
    id: `tire-tread-${axle}-${groove}`,
    asks: isSteer
      ? `Is there enough tread on the front tires, in the ${name}?`
      : `Is there enough tread on the tires behind the front axle, in the ${name}?`,
    why: isSteer
      ? 'A front tire that lets go takes the steering with it.'
      : 'Tires with little tread lose their grip in the wet and fail sooner.',
    part: 'tire',
    aspect,
    appliesTo:
      groove === 'mid'
        ? here
        : (facts, place) => here(facts, place) && facts.get('tire', aspect, place) !== undefined,
    expectedAt:
      groove === 'mid' ? (facts) => (isSteer ? steerTirePlaces(facts) : otherTirePlaces(facts)) : () => [],
    look: 'Tread gauge in two neighboring grooves at three places round the tire, off the wear bars; keep the lowest.',
    minutes: 2,
    steps: isSteer
      ? [
          { weight: 'danger', must: 'at least', limit: treadSteer },
          { weight: 'defect', must: 'at least', limit: treadSteerSoon },
          { weight: 'wear', must: 'at least', limit: treadSteerWatch },
        ]
      : [
          { weight: 'danger', must: 'at least', limit: treadOther },
          { weight: 'defect', must: 'at least', limit: treadOtherSoon },
          { weight: 'wear', must: 'at least', limit: treadOtherWatch },
        ],
    says: {
      meets: `The ${name} has tread to spare.`,
      fails: `The ${name} is short of tread.`,
      cannotTell: `The reading of the ${name} is too near a limit, or is not a depth: measure it again with a gauge.`,
      notSeen: `The tread in the ${name} has not been measured.`,
    },
    next: 'Price a pair (or the set, if the mates match it) and change them before a buyer drives it; do not drive it if it is under the floor.',
    who: 'tire shop',
    caution: 'tires',
    proofs: numberProofs(
      '[in_i]/32',
      isSteer
        ? [
            [3.9, 'fails', 'stop'],
            [4, 'fails', 'repair'],
            [4.9, 'fails', 'repair'],
            [5, 'fails', 'watch'],
            [6.9, 'fails', 'watch'],
            [7, 'meets', 'sound'],
            [12, 'meets', 'sound'],
            [4, 'cannot tell', 'stop', 1],
            [7, 'cannot tell', 'watch', 0.5],
            [9, 'meets', 'sound', 1],
          ]
        : [
            [1.9, 'fails', 'stop'],
            [2, 'fails', 'repair'],
            [3.9, 'fails', 'repair'],
            [4, 'fails', 'watch'],
            [6, 'meets', 'sound'],
            [10, 'meets', 'sound'],
            [2, 'cannot tell', 'stop', 0.5],
            [6, 'cannot tell', 'watch', 0.5],
            [8, 'meets', 'sound', 1],
          ],
    ),
  };
}
