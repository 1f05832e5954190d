// Why: a rested battery's voltage tells its charge, where somebody published the table.
import { day } from '../../units/day.ts';
import type { Citation, Source, Table } from '../standard.ts';

const flooded: Source = {
  id: 'flooded-resting-voltage',
  title: 'State of charge by resting voltage, 12 V flooded lead-acid at 80 F',
  publisher: "a battery maker's technical page",
  edition: 'undated',
  standing: 'maker',
  scope:
    "Address withheld: it carries a maker's name. At rest for hours, nothing drawing or charging, 80 F. 0.024 V lower for every 10 F colder.",
};
const agm: Source = {
  id: 'agm-resting-voltage',
  title: 'Resting voltage of 12 V AGM batteries, two pages that disagree',
  publisher: 'web pages',
  edition: 'undated',
  standing: 'trade practice',
  scope:
    'The pages differ by 0.2 V: a band, not a reading. Two cells of the second page are read between its rows.',
};
const cite = (source: Source, says: string): Citation => ({
  source,
  clause: 'table',
  says,
  read: day('2026-11-24'),
});

export interface ChargeRow {
  readonly percent: number;
  readonly volts: number;
}
export const floodedVoltage: Table<ChargeRow> = {
  id: 'flooded-voltage',
  what: 'charge of a rested 12 V flooded battery',
  citation: cite(
    flooded,
    '12.65 V full, 12.45 V at 75, 12.24 V at 50, 12.06 V at 25 percent, 11.89 V empty.',
  ),
  rows: [
    { percent: 0, volts: 11.89 },
    { percent: 25, volts: 12.06 },
    { percent: 50, volts: 12.24 },
    { percent: 75, volts: 12.45 },
    { percent: 100, volts: 12.65 },
  ],
};
export const agmVoltageHigh: Table<ChargeRow> = {
  id: 'agm-voltage-high',
  what: 'charge of a rested 12 V AGM battery, the page with the higher voltages',
  citation: cite(agm, '12.9 V full, 11.8 V empty.'),
  rows: [
    { percent: 0, volts: 11.8 },
    { percent: 25, volts: 12 },
    { percent: 50, volts: 12.3 },
    { percent: 75, volts: 12.6 },
    { percent: 100, volts: 12.9 },
  ],
};
export const agmVoltageLow: Table<ChargeRow> = {
  id: 'agm-voltage-low',
  what: 'charge of a rested 12 V AGM battery, the page with the lower voltages',
  citation: cite(agm, '12.7 V full, 11.6 V empty.'),
  rows: [
    { percent: 0, volts: 11.6 },
    { percent: 25, volts: 11.75 },
    { percent: 50, volts: 12.1 },
    { percent: 75, volts: 12.4 },
    { percent: 100, volts: 12.7 },
  ],
};
/** Volts for every 10 F; what the temperature of the battery may do to the reading when nobody took it. */
export const voltsForTenDegrees = 0.024;
/** Above this a battery is being charged or has not rested. */
export const notRestedAbove = 13;
