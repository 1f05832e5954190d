// The figures, in the order in which they are shown.
import { batteryHours } from './battery-hours/figure.ts';
import { enginePower } from './engine-power/figure.ts';
import type { FigureCard } from './figure.ts';
import { modelYear } from './model-year/figure.ts';
import { oldestTire } from './oldest-tire/figure.ts';
import { tireAge } from './tire-age/figure.ts';
import { vinCheck } from './vin-check/figure.ts';

export const figureCards: readonly FigureCard[] = [
  vinCheck,
  modelYear,
  tireAge,
  oldestTire,
  enginePower,
  batteryHours,
];

/** The card of that id, if there is one. */
export const figureCardOf = (id: string): FigureCard | undefined => figureCards.find((c) => c.id === id);
