// Why: loose terminals burn coaches.
import { terminalBurning, terminalHot, terminalWarm } from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const terminalHeat: Rule = {
  id: 'terminal-heat',
  asks: 'Does a terminal or plug run hot?',
  why: 'Loose terminals burn coaches.',
  part: 'electric_panel',
  aspect: 'max_temp_F',
  appliesTo: (facts, place) => facts.get('electric_panel', 'max_temp_F', place) !== undefined,
  expectedAt: () => [],
  look: 'Infrared at covers and plugs after an hour of load; covers on.',
  minutes: 8,
  steps: [
    { weight: 'danger', must: 'at most', limit: terminalBurning },
    { weight: 'defect', must: 'at most', limit: terminalHot },
    { weight: 'wear', must: 'at most', limit: terminalWarm },
  ],
  says: {
    meets: 'Nothing ran hot.',
    fails: 'A terminal or plug runs hot.',
    cannotTell: 'The reading is too near a limit, or is not a temperature.',
    notSeen: 'Nobody has measured terminals under load.',
  },
  next: 'Shut off; an electrician tightens or changes it.',
  who: 'qualified electrician or certified RV technician',
  caution: 'shore-power',
  proofs: numberProofs('[degF]', [
    [95, 'meets', 'sound'],
    [120, 'meets', 'sound'],
    [130, 'fails', 'watch'],
    [140, 'fails', 'watch'],
    [150, 'fails', 'repair'],
    [180, 'fails', 'repair'],
    [190, 'fails', 'stop'],
    [120, 'cannot tell', 'watch', 3],
  ]),
};
