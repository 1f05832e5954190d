// Why: the published meaning of the date in a tire identification number.
import { day } from '../../units/day.ts';
import type { Citation, Source } from '../standard.ts';

const source: Source = {
  id: '49-cfr-574-5',
  title: '49 CFR 574.5 Tire identification requirements',
  publisher: 'US Code of Federal Regulations',
  edition: '2015 annual edition',
  standing: 'law',
  address: 'https://github.com/18F/allregs html/sections/49CFR574.5.html',
  scope:
    'Binds tire makers. The full number may stand on one sidewall only. Later amendments were not checked.',
};
const notice: Source = {
  id: '64-fr-36807',
  title: '64 FR 36807, tire identification and record keeping, final rule',
  publisher: 'US Federal Register',
  edition: '8 July 1999',
  standing: 'law',
  address: 'https://www.govinfo.gov/content/pkg/FR-1999-07-08/html/99-17402.htm',
  scope: 'Changed the date code from three digits to four.',
};

export const tireDateCode: Citation = {
  source,
  clause: '574.5(b)(3)',
  says: 'The last four symbols are the week and the year; week 01 is the first full week, Sunday to Saturday, of the year, and the last week may run up to six days into the next year.',
  read: day('2026-11-24'),
};
export const tireThreeDigitCode: Citation = {
  source: notice,
  clause: 'preamble',
  says: 'Until then the date was three digits, two for the week and one for the year; the decade was not in the code.',
  read: day('2026-11-24'),
};

/** Tires made from this year on carry four digits. */
export const tireFourDigitsFrom = 2000;
/** A year has no week beyond this one. */
export const tireLastWeek = 53;
