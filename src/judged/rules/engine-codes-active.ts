// Why: a scan is a cheap look and expensive news.
import { activeCodes } from '../../standards/trade-practice/engine-and-chassis.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const engineCodesActive: Rule = {
  id: 'engine-codes-active',
  asks: 'Are fault codes active?',
  why: 'It is a cheap check and may be expensive news.',
  part: 'engine_ecm',
  aspect: 'active',
  look: 'Scan active and stored codes.',
  minutes: 8,
  steps: [{ weight: 'defect', must: 'at most', limit: activeCodes }],
  says: {
    meets: 'No code was active.',
    fails: 'Codes are active.',
    cannotTell: 'They were not counted: scan again.',
    notSeen: 'The engine has not been scanned.',
  },
  next: 'Read what they are; amber is a job, red or a derate does not drive.',
  who: 'shop technician',
  proofs: numberProofs('1', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'repair'],
    [4, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 1],
  ]),
};
