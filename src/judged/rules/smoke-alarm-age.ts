// Why: a smoke alarm wears out by its date, tested or not.
import {
  smokeAlarmLife,
  smokeAlarmWatch,
} from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { dateProofs, wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const smokeAlarmAge: Rule = {
  id: 'smoke-alarm-age',
  asks: 'How old is the smoke alarm?',
  why: 'It wears out by its date, whether its button works or not.',
  part: 'smoke_alarm',
  aspect: 'date',
  look: 'Date on the back of the case.',
  minutes: 2,
  steps: [
    { weight: 'danger', must: 'at most', limit: smokeAlarmLife },
    { weight: 'wear', must: 'at most', limit: smokeAlarmWatch },
  ],
  says: {
    meets: 'The smoke alarm is within its years by its date.',
    fails: 'The smoke alarm is past its years, or near their end.',
    cannotTell: 'The date does not settle it: read day, month and year off the case.',
    notSeen: 'The date of the smoke alarm has not been read.',
  },
  next: 'Change it; write the new date on the case.',
  who: 'shop technician',
  caution: 'carbon-monoxide',
  proofs: [
    ...wordProofs([]),
    ...dateProofs([
      ['2020-02-01', 'meets', 'sound'],
      ['2018-11-24', 'meets', 'sound'],
      ['2018-11-23', 'fails', 'watch'],
      ['2016-11-24', 'fails', 'watch'],
      ['2016-11-23', 'fails', 'stop'],
      ['2015-06', 'fails', 'stop'],
      ['2016-11', 'cannot tell', 'stop'],
    ]),
  ],
};
