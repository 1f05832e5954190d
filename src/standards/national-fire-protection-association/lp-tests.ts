// Why: what an LP gas system has to hold, and what its regulator may give.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Source } from '../standard.ts';
import { nfpa1192 } from './alarms-and-extinguishers.ts';

const readOn = day('2026-11-24');

export const technicianTraining: Source = {
  id: 'rv-technician-training',
  title: 'Training questions for RV technicians: timed pressure drop test, regulator lock-up',
  publisher: 'a test-preparation site',
  edition: 'undated',
  standing: 'trade practice',
  address: 'https://rv-technician.examzify.com',
  scope: 'A secondary page; the standards behind it (NFPA 1192 and 58) were not read.',
};

/** At 8 inches of water column for three minutes, nothing may be lost. */
export const lpPressureHeld = limitOf(
  'lp-pressure-held',
  'pressure held to the end of the timed drop test',
  "[in_i'H2O]",
  readOn,
  8,
  {
    source: technicianTraining,
    clause: 'timed pressure drop test',
    says: 'the system is put at 8 inches of water column and holds it without a drop',
    read: readOn,
  },
  { source: nfpa1192, clause: 'not known', says: 'the test lasts 3 minutes', read: 'from memory' },
);

export const regulatorLockUp = limitOf(
  'regulator-lock-up',
  'pressure with everything off',
  "[in_i'H2O]",
  readOn,
  14,
  {
    source: technicianTraining,
    clause: 'lock-up',
    says: 'lock-up is no more than 14 inches of water column',
    read: readOn,
  },
);
