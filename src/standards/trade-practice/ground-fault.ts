// Why: a ground-fault outlet is proved by tripping it; the number behind it is from memory.
import type { Citation, Source } from '../standard.ts';

export const ul943: Source = {
  id: 'ul-943',
  title: 'UL 943, Ground-Fault Circuit-Interrupters',
  publisher: 'Underwriters Laboratories',
  edition: 'from memory',
  standing: 'standard',
  scope: 'From memory: the standard was not read.',
};

/** A citation of it. */
export const groundFault = (says: string): Citation => ({
  source: ul943,
  clause: 'not known',
  says,
  read: 'from memory',
});
