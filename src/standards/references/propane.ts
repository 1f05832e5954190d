// Why: how much heat stands in a tank of propane.
import { day } from '../../units/day.ts';
import type { Citation, Source } from '../standard.ts';
import type { Supposed } from '../supposed.ts';
import { practice } from '../trade-practice/practice.ts';

const source: Source = {
  id: 'propane-properties',
  title: 'Properties of commercial propane at 60 F',
  publisher: 'trade pages quoting an LP-gas handbook',
  edition: 'undated',
  standing: 'trade practice',
  address: 'http://www.patioheat.com/lp_gas.htm',
  scope: 'Secondary pages. They agree on the heat of a gallon; the weight is given as 4.2 to 4.24 lb.',
};
const cite = (clause: string, says: string): Citation => ({ source, clause, says, read: day('2026-11-24') });

export const propaneHeat: Supposed = {
  id: 'propane-heat',
  what: 'heat of a gallon of propane',
  value: 91_502,
  unit: '[Btu]/[gal_us]',
  plusOrMinus: 500,
  citations: [cite('table', '91,502 Btu a gallon after vaporization, 21,548 Btu a pound.')],
};
export const propaneFill: Supposed = {
  id: 'propane-fill',
  what: 'share of the tank that is filled',
  value: 0.8,
  unit: '1',
  plusOrMinus: 0.02,
  citations: [cite('filling', 'Tanks are filled to 80 percent of their water capacity.')],
};
export const furnaceInput: Supposed = {
  id: 'furnace-input',
  what: 'what the furnace burns when it runs',
  value: 35_000,
  unit: '[Btu]/h',
  plusOrMinus: 5_000,
  citations: [practice('One furnace of a mid-sized coach. Its label says.')],
};
export const furnaceDuty: Supposed = {
  id: 'furnace-duty',
  what: 'share of the day it runs',
  value: 0.3,
  unit: '1',
  plusOrMinus: 0.1,
  citations: [practice('About a third of a cold day; far more in deep frost.')],
};
