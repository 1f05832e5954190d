// Why: what is supposed of batteries and loads when nobody measured them.
import type { Supposed } from '../supposed.ts';
import { practice } from './practice.ts';
import { practiceFromMemory } from './practice-from-memory.ts';

export type Chemistry = 'flooded' | 'AGM' | 'gel' | 'lithium iron phosphate';

/** Share of the rated charge that is used before recharging, by chemistry. */
export const usableShare: Readonly<Record<Chemistry, Supposed>> = {
  flooded: {
    id: 'usable-flooded',
    what: 'usable share of a flooded battery',
    value: 0.5,
    unit: '1',
    plusOrMinus: 0.05,
    citations: [practice('Flooded lead batteries are used to half.')],
  },
  AGM: {
    id: 'usable-agm',
    what: 'usable share of an AGM battery',
    value: 0.55,
    unit: '1',
    plusOrMinus: 0.05,
    citations: [practice('AGM batteries are used to 50 to 60 percent.')],
  },
  gel: {
    id: 'usable-gel',
    what: 'usable share of a gel battery',
    value: 0.5,
    unit: '1',
    plusOrMinus: 0.05,
    citations: [practice('Gel batteries are used like flooded ones, to half.')],
  },
  'lithium iron phosphate': {
    id: 'usable-lithium',
    what: 'usable share of a lithium iron phosphate battery',
    value: 0.85,
    unit: '1',
    plusOrMinus: 0.05,
    citations: [practice('Lithium iron phosphate batteries are used to 80 to 90 percent.')],
  },
};

/** Voltage under a moderate load, by chemistry, of a battery sold as 12 V. */
export const workingVolts: Readonly<Record<Chemistry, Supposed>> = {
  flooded: {
    id: 'volts-flooded',
    what: 'working voltage, flooded',
    value: 12,
    unit: 'V',
    plusOrMinus: 0.2,
    citations: [practice('12 V.')],
  },
  AGM: {
    id: 'volts-agm',
    what: 'working voltage, AGM',
    value: 12,
    unit: 'V',
    plusOrMinus: 0.2,
    citations: [practice('12 V.')],
  },
  gel: {
    id: 'volts-gel',
    what: 'working voltage, gel',
    value: 12,
    unit: 'V',
    plusOrMinus: 0.2,
    citations: [practice('12 V.')],
  },
  'lithium iron phosphate': {
    id: 'volts-lithium',
    what: 'working voltage, lithium iron phosphate',
    value: 12.8,
    unit: 'V',
    plusOrMinus: 0.2,
    citations: [practice('Four cells of 3.2 V: 12.8 V.')],
  },
};

/** Peukert exponent by chemistry: how much charge is lost at high current. */
export const peukertExponent: Readonly<Record<Chemistry, Supposed>> = {
  flooded: {
    id: 'peukert-flooded',
    what: 'Peukert exponent, flooded',
    value: 1.25,
    unit: '1',
    plusOrMinus: 0.1,
    citations: [practice('About 1.25 where the maker gives none.')],
  },
  AGM: {
    id: 'peukert-agm',
    what: 'Peukert exponent, AGM',
    value: 1.12,
    unit: '1',
    plusOrMinus: 0.07,
    citations: [practiceFromMemory('Between 1.05 and 1.15.')],
  },
  gel: {
    id: 'peukert-gel',
    what: 'Peukert exponent, gel',
    value: 1.15,
    unit: '1',
    plusOrMinus: 0.1,
    citations: [practiceFromMemory('Between 1.1 and 1.25.')],
  },
  'lithium iron phosphate': {
    id: 'peukert-lithium',
    what: 'Peukert exponent, lithium',
    value: 1,
    unit: '1',
    plusOrMinus: 0.02,
    citations: [practiceFromMemory('Nearly 1: the current hardly matters.')],
  },
};

/** Hours over which lead batteries are rated. */
export const ratedOver: Supposed = {
  id: 'rated-over',
  what: 'hours over which the capacity is rated',
  value: 20,
  unit: 'h',
  plusOrMinus: 0,
  citations: [practice('Deep-cycle batteries are rated over 20 hours unless the label says otherwise.')],
};
export const houseLoad: Supposed = {
  id: 'house-load',
  what: 'steady load on the inverter',
  value: 600,
  unit: 'W',
  plusOrMinus: 200,
  citations: [practice('Refrigerator, lights and a screen: some hundreds of watts. Put in your own.')],
};
export const inverterEfficiency: Supposed = {
  id: 'inverter-efficiency',
  what: 'efficiency of the inverter',
  value: 0.9,
  unit: '1',
  plusOrMinus: 0.04,
  citations: [practice('85 to 95 percent.')],
};
export const inverterIdle: Supposed = {
  id: 'inverter-idle',
  what: 'what the inverter draws for itself',
  value: 20,
  unit: 'W',
  plusOrMinus: 10,
  citations: [practice('10 to 30 watts.')],
};
