// Why: a regulator ages by the date on its case.
import { regulatorOut, regulatorWatch } from '../../standards/trade-practice/house-systems.ts';
import { dateProofs, wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const lpRegulatorAge: Rule = {
  id: 'lp-regulator-age',
  asks: 'How old is the gas regulator?',
  why: 'Overpressure burns coaches.',
  part: 'lp_regulator',
  aspect: 'date',
  look: 'Date on the case; hose cracks; do not open.',
  minutes: 3,
  steps: [
    { weight: 'defect', must: 'at most', limit: regulatorOut },
    { weight: 'wear', must: 'at most', limit: regulatorWatch },
  ],
  says: {
    meets: 'It is young enough by its date.',
    fails: 'By its date it is due.',
    cannotTell: 'The date does not settle it: read it off the case.',
    notSeen: 'Its date has not been read.',
  },
  next: 'Change it together with the hoses.',
  who: 'licensed LP gas technician',
  caution: 'lp-gas',
  proofs: [
    ...wordProofs([]),
    ...dateProofs([
      ['2022-06-01', 'meets', 'sound'],
      ['2018-11-24', 'meets', 'sound'],
      ['2018-11-23', 'fails', 'watch'],
      ['2014-11-24', 'fails', 'watch'],
      ['2014-11-23', 'fails', 'repair'],
      ['2018-11', 'cannot tell', 'watch'],
    ]),
  ],
};
