// Why: by how much one unit's price differs from another's for a year, a mile, a foot; every rate can be changed.
// Common practice, no source: US dollars of 2026, wide on purpose. The middle of each range is what is used.
import type { VehicleKind } from '../catalogue/vehicle-kind.ts';

type Range = readonly [low: number, high: number];

/** The usual ranges for a kind of vehicle. Absent: that thing is not adjusted for. */
interface UsualRates {
  /** Percent of price per model year, compound. */
  readonly yearPercent: Range;
  /** Dollars a mile. */
  readonly mile?: Range;
  /** Dollars a foot of length. */
  readonly foot: Range;
  /** Dollars a working slide-out. */
  readonly slide?: Range;
  /** Dollars a horsepower. */
  readonly horsepower?: Range;
  /** Percent off for a generator over `generatorHours`. */
  readonly generatorPercent?: Range;
}

const usual: Record<VehicleKind, UsualRates> = {
  'class-a-diesel': {
    yearPercent: [5, 8],
    mile: [0.1, 0.25],
    foot: [1500, 4000],
    slide: [4000, 8000],
    horsepower: [60, 120],
    generatorPercent: [1, 1],
  },
  'class-a-gas': {
    yearPercent: [7, 9],
    mile: [0.15, 0.3],
    foot: [1000, 2000],
    slide: [3000, 6000],
    horsepower: [20, 60],
    generatorPercent: [1, 1],
  },
  'class-b': {
    yearPercent: [5, 7],
    mile: [0.15, 0.3],
    foot: [500, 1500],
    horsepower: [0, 30],
    generatorPercent: [1, 1],
  },
  'class-c': {
    yearPercent: [6, 8],
    mile: [0.1, 0.2],
    foot: [800, 1500],
    slide: [2000, 5000],
    horsepower: [0, 30],
    generatorPercent: [1, 1],
  },
  'fifth-wheel': { yearPercent: [8, 10], foot: [500, 1500], slide: [2000, 4000] },
  'travel-trailer': { yearPercent: [8, 11], foot: [400, 900], slide: [1500, 3000] },
};

/** The rates as used. Money in dollars, parts of a price as fractions. */
export interface Rates {
  readonly year: number;
  readonly mile: number;
  readonly foot: number;
  readonly slide: number;
  readonly horsepower: number;
  readonly generator: number;
  /** What a unit sells for as a part of what is asked. Class A and C: 0.94 to 0.96; the others have no figure of their own. */
  readonly askToSold: number;
  /** Past this age in years a model year counts half. */
  readonly oldAge: number;
  readonly milesCap: number;
  /** Length, slides and power move together with the model line: no more than this part of the comparable, together. */
  readonly groupCap: number;
  readonly generatorHours: number;
}

const middle = (of: Range | undefined): number => (of === undefined ? 0 : (of[0] + of[1]) / 2);

/** The middle of the usual ranges for a kind of vehicle. */
export function ratesFor(kind: VehicleKind): Rates {
  const of = usual[kind];
  return {
    year: middle(of.yearPercent) / 100,
    mile: middle(of.mile),
    foot: middle(of.foot),
    slide: middle(of.slide),
    horsepower: middle(of.horsepower),
    generator: middle(of.generatorPercent) / 100,
    askToSold: 0.95,
    oldAge: 12,
    milesCap: 0.08,
    groupCap: 0.06,
    generatorHours: 2000,
  };
}

/** How comparables are weighed. Common practice, no source; the last three are house defaults. */
export const weighing = {
  daysToHalf: 90,
  milesToHalf: 1000,
  leastForGross: 0.2,
  sold: 1.3,
  /** Gross adjustment, percent: from here on weak; from here on left out. */
  weakPercent: 25,
  dropPercent: 40,
  /** Fewer than this is few; fewer than two is no range at all. */
  few: 4,
  /** The same unit offered twice: miles within this, price within this part. */
  sameMiles: 300,
  samePrice: 0.03,
  roundTo: 500,
  /** For each column that the unit has and the comparable has not. */
  missingColumn: 0.85,
  /** Percent a model year, and correlation, from which the adjusted prices still lean on the year. */
  leanPercent: 2,
  leanCorrelation: 0.7,
} as const;
