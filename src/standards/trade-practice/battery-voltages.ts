// Why: what a battery's volts at rest say of its charge.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Source } from '../standard.ts';
import { practiceLimit } from './practice.ts';

const readOn = day('2026-11-24');

export const batteryPage: Source = {
  id: 'battery-technical-page',
  title: 'Technical page on open-circuit voltage of flooded 12 V batteries',
  publisher: 'a battery maker (name withheld)',
  edition: 'undated',
  standing: 'maker',
  scope:
    'Flooded lead-acid, rested, at 80 °F: 12.65 V full, 12.45 V three quarters, 12.24 V half, 12.06 V a quarter, 11.89 V empty.',
};
const tradeTable: Source = {
  id: 'resting-voltage-table',
  title: 'Resting voltage table of the trade',
  publisher: 'common knowledge',
  edition: 'from memory',
  standing: 'trade practice',
  scope:
    'From memory: 12.6 V and more full, 12.4 V three quarters, 12.2 V half, two hours or more at rest. Sealed mat batteries read up to 0.2 V higher.',
};
const crankTest: Source = {
  id: 'sae-j537',
  title: 'SAE J537, Storage Batteries: load test',
  publisher: 'SAE International',
  edition: 'from memory',
  standing: 'standard',
  scope: 'From memory, not read: at half the cold-cranking rating for 15 seconds, not below 9.6 V at 70 °F.',
};
const ironPhosphate: Source = {
  id: 'iron-phosphate-chart',
  title: 'Resting voltage chart of 12 V lithium iron phosphate batteries',
  publisher: 'a web page',
  edition: 'undated',
  standing: 'trade practice',
  address: 'https://gridwright.com/calculators/solar/lifepo4-voltage-chart',
  scope: 'One weak source. The curve is so flat that volts say little of charge and nothing of health.',
};

export const restFull = limitOf(
  'rest-volts-full',
  'lead-acid house bank at rest, charged',
  'V',
  readOn,
  12.6,
  {
    source: tradeTable,
    clause: 'full',
    says: 'a charged 12 V lead-acid battery rests at 12.6 V or more',
    read: 'from memory',
  },
  { source: batteryPage, clause: 'table', says: 'full is 12.65 V', read: readOn },
);

export const restHalf = limitOf(
  'rest-volts-half',
  'lead-acid house bank at rest, half charged',
  'V',
  readOn,
  12.2,
  {
    source: tradeTable,
    clause: 'half',
    says: 'a 12 V lead-acid battery at rest with 12.2 V is half empty',
    read: 'from memory',
  },
  { source: batteryPage, clause: 'table', says: 'half is 12.24 V', read: readOn },
);

export const lithiumRestGood = limitOf(
  'lithium-rest-good',
  'lithium iron phosphate bank at rest, charged',
  'V',
  readOn,
  13.2,
  {
    source: ironPhosphate,
    clause: 'chart',
    says: '13.2 V is about two fifths of a charge, 13.4 V nine tenths',
    read: readOn,
  },
);

export const lithiumRestLow = limitOf(
  'lithium-rest-low',
  'lithium iron phosphate bank at rest, nearly empty',
  'V',
  readOn,
  12.9,
  {
    source: ironPhosphate,
    clause: 'chart',
    says: '12.8 V is about one fifth of a charge, 13.0 V three tenths',
    read: readOn,
  },
);

export const crankVolts = limitOf('crank-volts', 'chassis battery while cranking', 'V', readOn, 9.6, {
  source: crankTest,
  clause: 'load test',
  says: 'not below 9.6 V under load',
  read: 'from memory',
});

export const crankVoltsGood = practiceLimit(
  'crank-volts-good',
  'chassis battery while cranking, with something to spare',
  'V',
  10,
  'a battery that stays at 10 V while cranking has something left for a cold morning',
);

export const chargeLeast = practiceLimit(
  'charge-volts-least',
  'charging volts of the converter or inverter',
  'V',
  13.2,
  'a charger that works holds 13.2 V or more at the battery',
);
export const chargeNone = practiceLimit(
  'charge-volts-none',
  'volts below which nothing is charging',
  'V',
  12.9,
  'under 12.9 V nothing is charging',
);
export const chargeMost = practiceLimit(
  'charge-volts-most',
  'charging volts that harm',
  'V',
  15,
  'more than 15 V boils a battery',
);
export const loadVoltsGood = practiceLimit(
  'load-volts-good',
  'lead-acid house bank after ten minutes under 500 to 1,000 W',
  'V',
  12,
  'a sound lead-acid bank stays at 12.0 V',
);
export const loadVoltsWeak = practiceLimit(
  'load-volts-weak',
  'lead-acid house bank after ten minutes under load, weak',
  'V',
  11.5,
  'a bank under 11.5 V after ten minutes is worn out',
);
export const twelveVoltLeast = practiceLimit(
  'twelve-volt-least',
  'nominal volts of what is sold as a 12 V bank, least',
  'V',
  11,
  'a 12 V bank is sold as 12 or 12.8 V; 6 V batteries are named as such',
);
export const twelveVoltMost = practiceLimit(
  'twelve-volt-most',
  'volts that no 12 V bank rests at',
  'V',
  16,
  'more than 16 V is a bank of 24, 36 or 48 V',
);
