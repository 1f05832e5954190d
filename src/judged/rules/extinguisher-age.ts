// Why: an extinguisher is only as good as its date.
import {
  extinguisherInternal,
  extinguisherLife,
} from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { dateProofs, wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const extinguisherAge: Rule = {
  id: 'extinguisher-age',
  asks: 'How old is the extinguisher?',
  why: 'It is for the first two minutes of a fire.',
  part: 'extinguisher',
  aspect: 'date',
  look: 'Date on the bottom or label; gauge; tag.',
  minutes: 2,
  steps: [
    { weight: 'defect', must: 'at most', limit: extinguisherLife },
    { weight: 'wear', must: 'at most', limit: extinguisherInternal },
  ],
  says: {
    meets: 'The extinguisher is within its years by its date.',
    fails: 'The extinguisher is past its years, or due for service.',
    cannotTell: 'The date does not settle it: read it off the bottle.',
    notSeen: 'The date of the extinguisher has not been read.',
  },
  next: 'Service or change it.',
  who: 'shop technician',
  proofs: [
    ...wordProofs([]),
    ...dateProofs([
      ['2023-02-01', 'meets', 'sound'],
      ['2020-11-24', 'meets', 'sound'],
      ['2020-11-23', 'fails', 'watch'],
      ['2014-11-24', 'fails', 'watch'],
      ['2014-11-23', 'fails', 'repair'],
      ['2020-11', 'cannot tell', 'watch'],
    ]),
  ],
};
