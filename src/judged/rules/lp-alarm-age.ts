// Why: a gas alarm wears out by its date, tested or not.
import {
  lpAlarmLife,
  lpAlarmLifeLongest,
} from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { dateProofs, wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const lpAlarmAge: Rule = {
  id: 'lp-alarm-age',
  asks: 'How old is the gas alarm?',
  why: 'It wears out by its date, whether its button works or not.',
  part: 'lp_alarm',
  aspect: 'date',
  look: 'Date on the back of the case.',
  minutes: 2,
  steps: [
    { weight: 'danger', must: 'at most', limit: lpAlarmLifeLongest },
    { weight: 'defect', must: 'at most', limit: lpAlarmLife },
  ],
  says: {
    meets: 'The gas alarm is within its years by its date.',
    fails: 'The gas alarm is past its years, or near their end.',
    cannotTell: 'The date does not settle it: read day, month and year off the case.',
    notSeen: 'The date of the gas alarm has not been read.',
  },
  next: 'Change it; write the new date on the case.',
  who: 'shop technician',
  caution: 'lp-gas',
  proofs: [
    ...wordProofs([]),
    ...dateProofs([
      ['2023-02-01', 'meets', 'sound'],
      ['2021-11-24', 'meets', 'sound'],
      ['2021-11-23', 'fails', 'repair'],
      ['2019-11-24', 'fails', 'repair'],
      ['2019-11-23', 'fails', 'stop'],
      ['2021-11', 'cannot tell', 'watch'],
    ]),
  ],
};
