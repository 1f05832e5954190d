// Why: a carbon monoxide alarm wears out by its date, tested or not.
import {
  coAlarmLife,
  coAlarmLifeOld,
} from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { dateProofs, wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const coAlarmAge: Rule = {
  id: 'co-alarm-age',
  asks: 'How old is the carbon monoxide alarm?',
  why: 'It wears out by its date, whether its button works or not.',
  part: 'co_alarm',
  aspect: 'date',
  look: 'Date on the back of the case.',
  minutes: 2,
  steps: [
    { weight: 'danger', must: 'at most', limit: coAlarmLife },
    { weight: 'wear', must: 'at most', limit: coAlarmLifeOld },
  ],
  says: {
    meets: 'The carbon monoxide alarm is within its years by its date.',
    fails: 'The carbon monoxide alarm is past its years, or near their end.',
    cannotTell: 'The date does not settle it: read day, month and year off the case.',
    notSeen: 'The date of the carbon monoxide alarm has not been read.',
  },
  next: 'Change it; write the new date on the case.',
  who: 'shop technician',
  caution: 'carbon-monoxide',
  proofs: [
    ...wordProofs([]),
    ...dateProofs([
      ['2023-02-01', 'meets', 'sound'],
      ['2021-11-24', 'meets', 'sound'],
      ['2021-11-23', 'fails', 'watch'],
      ['2019-11-24', 'fails', 'watch'],
      ['2019-11-23', 'fails', 'stop'],
      ['2012', 'fails', 'stop'],
      ['2019-11', 'cannot tell', 'stop'],
    ]),
  ],
};
