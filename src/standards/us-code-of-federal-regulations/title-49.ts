// Why: the sections of title 49 that the rules lean on, as sources; the numbers stand in a file for each section.
import { day } from '../../units/day.ts';
import type { Citation, Source } from '../standard.ts';

/** The day the sections were read, in the annual edition named in each source. */
export const readOn = day('2026-11-24');
/** The annual edition of title 49 is as of October 1. */
export const asOf2015 = day('2015-10-01');

const commercial =
  'Binds commercial vehicles; for a private coach it is a benchmark, not a law it was checked under. Read in the 2015 annual edition: read the text in force before relying on it.';
const inUse =
  'Federal in-use inspection standard for vehicles over 10,000 lb gross rating; states decide what binds a private coach. Read in the 2015 annual edition.';
const construction =
  'Binds makers of trucks, buses and trailers; for a motorhome it is a benchmark. Read in the 2015 annual edition.';

const cfr = (section: string, name: string, scope: string): Source => ({
  id: `49-cfr-${section.replace('.', '-')}`,
  title: `49 CFR ${section}, ${name}`,
  publisher: 'US Code of Federal Regulations',
  edition: '2015 annual edition',
  standing: 'law',
  address: `https://github.com/18F/allregs html/sections/49CFR${section}.html`,
  scope,
});

export const section393p47 = cfr(
  '393.47',
  'Brake actuators, slack adjusters, linings/pads and drums/rotors',
  commercial,
);
export const section393p52 = cfr('393.52', 'Brake performance', commercial);
export const section393p60 = cfr('393.60', 'Glazing in specified openings', commercial);
export const section393p75 = cfr('393.75', 'Tires', commercial);
export const section393p95 = cfr('393.95', 'Emergency equipment on all power units', commercial);
export const section393p205 = cfr('393.205', 'Wheels', commercial);
export const section393p209 = cfr('393.209', 'Steering wheel systems', commercial);
export const section570p57 = cfr('570.57', 'Air brake system and air-over-hydraulic brake subsystem', inUse);
export const section571p121 = cfr('571.121', 'Standard No. 121; Air brake systems', construction);
export const section393p9 = {
  ...cfr('393.9', 'Lamps operable', commercial),
  address: 'https://www.ecfr.gov/current/title-49/part-393/subpart-B',
  edition: 'from memory',
  scope:
    'Binds commercial vehicles; every state has its own lamp law for the rest. From memory: not read for this edition.',
} satisfies Source;

/** A citation of a section that was read. */
export const read = (source: Source, clause: string, says: string): Citation => ({
  source,
  clause,
  says,
  read: readOn,
});
