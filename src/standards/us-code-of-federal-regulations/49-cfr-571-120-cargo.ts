// Why: what the federal cargo label of a motor home counts, and the weight of water it goes by.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Citation, Source } from '../standard.ts';

const source: Source = {
  id: '49-cfr-571-120-s10',
  title: '49 CFR 571.120 (FMVSS 120) S10, cargo labels of motor homes and recreational trailers',
  publisher: 'US Code of Federal Regulations',
  edition: '2015 annual edition; rule of 72 FR 68442 (4 December 2007)',
  standing: 'law',
  address: 'https://github.com/18F/allregs html/sections/49CFR571.120.html',
  scope:
    'Binds the makers of motor homes and recreational trailers over 10,000 lb GVWR, from 2 June 2008. Older labels count otherwise. Later amendments were not checked.',
};
const cite = (clause: string, says: string): Citation => ({ source, clause, says, read: day('2026-11-24') });

/** From this day on labels state the occupant and cargo carrying capacity; labels before it had paid for water and people already. */
export const cargoLabelSince = day('2008-06-02');
export const cargoLabel = cite(
  'S10',
  'Occupant and cargo carrying capacity is GVWR less the weight of the unloaded vehicle with full propane; people, water and the tongue weight of what is towed come out of it.',
);
export const labelWaterWeight = limitOf(
  'label-water-weight',
  'weight of water on the federal cargo label',
  '[lb_av]/[gal_us]',
  cargoLabelSince,
  8.3,
  cite('S10.4', 'The label counts water at 8.3 lb a gallon (1 kg a liter).'),
);
