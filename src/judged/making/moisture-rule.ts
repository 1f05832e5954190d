// Why: wood is pinned for moisture in six places of a coach, by the same two numbers.
import { woodRot, woodUsual } from '../../standards/trade-practice/wood-moisture.ts';
import type { Rule } from '../rule.ts';
import { numberProofs } from './proofs.ts';

export type MoistureCard = Pick<Rule, 'id' | 'asks' | 'why' | 'part' | 'look' | 'minutes' | 'caution'> & {
  readonly where: string;
};

/** A rule on a pin meter's reading of wood, percent by the wood scale. */
export function moistureRule({ where, ...card }: MoistureCard): Rule {
  return {
    ...card,
    aspect: 'moisture',
    steps: [
      { weight: 'defect', must: 'at most', limit: woodRot },
      { weight: 'wear', must: 'at most', limit: woodUsual },
    ],
    says: {
      meets: `${where}: no damper than dry panel usually is, where it was measured.`,
      fails: `${where}: damper than dry panel; water may be getting in.`,
      cannotTell: `${where}: the reading does not settle it. Measure again beside a spot that is known to be dry.`,
      notSeen: `${where}: nobody has put a moisture meter to it.`,
    },
    next: 'Find where the water comes in and stop it before opening or closing anything; then measure how far it has gone.',
    who: 'body or trim technician',
    proofs: numberProofs('%', [
      [9, 'meets', 'sound'],
      [16, 'meets', 'sound'],
      [16.1, 'fails', 'watch'],
      [20, 'fails', 'watch'],
      [20.1, 'fails', 'repair'],
      [35, 'fails', 'repair'],
      [16, 'cannot tell', 'watch', 1],
      [20, 'fails', 'watch', 1],
      [12, 'meets', 'sound', 2],
    ]),
  };
}
