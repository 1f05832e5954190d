// Why: what altitude and heat take from a generator; makers disagree, so several rules stand side by side.

import { day } from '../../units/day.ts';
import type { Citation, Source, Table } from '../standard.ts';
import type { Supposed } from '../supposed.ts';
import { practice } from './practice.ts';

const manuals: Source = {
  id: 'generator-manuals',
  title: "Operators' manuals of generators (several, makers not named)",
  publisher: 'makers of generators',
  edition: 'undated',
  standing: 'maker',
  scope:
    'Makers disagree with one another. The manual of the set at hand has the last word; turbocharged diesels lose less.',
};
const cite = (says: string): Citation => ({
  source: manuals,
  clause: 'altitude and temperature',
  says,
  read: day('2026-11-24'),
});

/** Loses `percent` for each `every` feet above `above` feet. */
export interface AltitudeRule {
  readonly percent: number;
  readonly every: number;
  readonly above: number;
}
const metres = (m: number): number => m / 0.3048;

/** The first rule is the one that is used; the others tell how far makers disagree. Feet, percent of the rating. */
export const altitudeRules: Table<AltitudeRule> = {
  id: 'generator-altitude-rules',
  what: "share of a generator's rating lost to altitude, by four makers' rules",
  citation: cite(
    '3.5 percent for each 1,000 ft above 1,000; 3 percent for each 1,000 ft from sea level; 3 percent for each 500 m above 1,000 m; 3.5 percent for each 300 m above 1,500 m.',
  ),
  rows: [
    { percent: 3.5, every: 1000, above: 1000 },
    { percent: 3, every: 1000, above: 0 },
    { percent: 3, every: metres(500), above: metres(1000) },
    { percent: 3.5, every: metres(300), above: metres(1500) },
  ],
};
/** Percent lost for each so many degrees Fahrenheit above so many. */
export const heatRule = {
  percent: 2,
  every: 10,
  above: 85,
  citation: cite('2 percent for each 10 F above 85 F.'),
} as const;

export const campAltitude: Supposed = {
  id: 'camp-altitude',
  what: 'altitude',
  value: 5000,
  unit: '[ft_i]',
  plusOrMinus: 0,
  citations: [practice('A mountain campground. Put in your own.')],
};
export const campTemperature: Supposed = {
  id: 'camp-temperature',
  what: 'outside temperature',
  value: 85,
  unit: '[degF]',
  plusOrMinus: 0,
  citations: [practice('A warm afternoon. Put in your own.')],
};
