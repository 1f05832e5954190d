// Why: heat is the air that comes out warmer than it went in.
import { furnaceRiseGood, furnaceRiseLow } from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const furnaceRise: Rule = {
  id: 'furnace-rise',
  asks: 'Does the furnace heat?',
  why: 'A cold coach is not lived in.',
  part: 'furnace_run',
  aspect: 'rise_F',
  appliesTo: (facts, place) => facts.get('furnace_run', 'rise_F', place) !== undefined,
  expectedAt: () => [],
  look: 'Thermometer at a near register, less the room.',
  minutes: 4,
  steps: [
    { weight: 'defect', must: 'at least', limit: furnaceRiseLow },
    { weight: 'wear', must: 'at least', limit: furnaceRiseGood },
  ],
  says: {
    meets: 'It heated.',
    fails: 'It does not heat enough.',
    cannotTell: 'The reading is too near a limit, or is not a temperature.',
    notSeen: 'The rise has not been measured.',
  },
  next: 'Ducts first, then the furnace.',
  who: 'certified RV technician',
  caution: 'carbon-monoxide',
  proofs: numberProofs('[degF]{difference}', [
    [15, 'fails', 'repair'],
    [25, 'fails', 'watch'],
    [30, 'fails', 'watch'],
    [35, 'meets', 'sound'],
    [55, 'meets', 'sound'],
    [35, 'cannot tell', 'watch', 2],
  ]),
};
