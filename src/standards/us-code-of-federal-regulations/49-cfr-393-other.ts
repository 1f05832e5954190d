// Why: sections whose words a rule goes by, without a number of their own.
import { read, section393p9, section393p95, section393p205 } from './title-49.ts';

export const wheelCitation = read(
  section393p205,
  '393.205',
  'no cracked or broken wheels, no stud holes out of round, no fastener missing or loose',
);
export const extinguisherCitation = read(
  section393p95,
  '393.95',
  'one extinguisher of 5 B:C or more, or two of 4 B:C or more, filled and in reach',
);
export const lampCitation = {
  source: section393p9,
  clause: '393.9',
  says: 'all lamps that are required are able to be lit at any time',
  read: 'from memory',
} as const;
