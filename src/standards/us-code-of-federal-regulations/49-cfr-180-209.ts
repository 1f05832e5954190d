// Why: when a portable gas cylinder has to be requalified.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Citation, Source } from '../standard.ts';

const since = day('2020-11-30');
export const section180p209: Source = {
  id: '49-cfr-180-209',
  title: '49 CFR 180.209, Requirements for requalification of specification cylinders',
  publisher: 'US Code of Federal Regulations',
  edition: 'as amended by 85 FR 68790, in force 30 November 2020',
  standing: 'law',
  address: 'https://www.govinfo.gov/content/pkg/FR-2020-10-30/html/2020-22483.htm',
  scope:
    'Portable cylinders only: a tank fixed in a motorhome is not one and bears no such date. Read in summary; the 5-year period in an older federal leaflet.',
};
const cite = (clause: string, says: string): Citation => ({
  source: section180p209,
  clause,
  says,
  read: day('2026-11-24'),
});

export const cylinderVolumetric = limitOf(
  'cylinder-volumetric',
  'years since the last requalification, longest method',
  'a',
  since,
  12,
  cite(
    '180.209(e)',
    'requalified by volumetric expansion, a cylinder is good for 12 years; by proof pressure, for 10',
  ),
);

export const cylinderVisual = limitOf(
  'cylinder-visual',
  'years since the last requalification, shortest method',
  'a',
  since,
  5,
  cite(
    '180.209(g)',
    'requalified by complete external inspection (letter E), a cylinder is good for 5 years',
  ),
);
