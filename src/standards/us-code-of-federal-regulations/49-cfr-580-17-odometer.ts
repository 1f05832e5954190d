// Why: which units need an odometer disclosure on transfer, and from which day they no longer do.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Citation, Source } from '../standard.ts';

const source: Source = {
  id: '49-cfr-580-17',
  title: '49 CFR 580.17 Exemptions (odometer disclosure)',
  publisher: 'US Code of Federal Regulations',
  edition: 'as of June 2026',
  standing: 'law',
  address: 'https://law.lawstack.com/cfr/49/580.17/',
  scope: 'Federal law on transfers. States may ask more. An exemption is not leave to misstate the mileage.',
};
const cite = (clause: string, says: string): Citation => ({ source, clause, says, read: day('2026-11-24') });
/** The text that was read is that of June 2026. */
const since = day('2026-06-01');

export const odometerExemptions = cite(
  '580.17',
  'Exempt: over 16,000 lb GVWR; not self-propelled; model year 2010 or older after 10 years; model year 2011 or newer after 20 years, counted from 1 January of the model year.',
);
export const odometerExemptOver = limitOf(
  'odometer-exempt-over',
  'GVWR over which no odometer disclosure is needed',
  '[lb_av]',
  since,
  16_000,
  cite('580.17', 'Over 16,000 lb GVWR.'),
);
export const odometerYearsOlder = limitOf(
  'odometer-years-older',
  'years of disclosure for model years up to 2010',
  'a',
  since,
  10,
  cite('580.17', 'Ten years.'),
);
export const odometerYearsNewer = limitOf(
  'odometer-years-newer',
  'years of disclosure for model years from 2011',
  'a',
  since,
  20,
  cite('580.17', 'Twenty years.'),
);
/** The last model year of the ten-year rule. */
export const odometerLastOlderYear = 2010;
