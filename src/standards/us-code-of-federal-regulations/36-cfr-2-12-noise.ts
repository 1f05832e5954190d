// Why: the distance at which a generator's noise counts.
import { day } from '../../units/day.ts';
import type { Citation } from '../standard.ts';

export const parkNoise: Citation = {
  source: {
    id: '36-cfr-2-12',
    title: '36 CFR 2.12 Audio disturbances',
    publisher: 'US Code of Federal Regulations',
    edition: 'as quoted in 2023',
    standing: 'law',
    address: 'https://campingfunzone.com/2023/07/28/national-parks-generator-noise-level/',
    scope: 'National park areas only, read in a secondary page. Campgrounds have rules of their own.',
  },
  clause: '2.12(a)(1)',
  says: 'Not over 60 dB(A) at 50 ft.',
  read: day('2026-11-24'),
};
/** Feet. */
export const parkNoiseDistance = 50;
