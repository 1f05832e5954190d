// Why: how the load a tire carries hangs on its pressure, where its maker's table is not at hand.
import { day } from '../../units/day.ts';
import type { Source } from '../standard.ts';
import type { Supposed } from '../supposed.ts';

const source: Source = {
  id: 'tire-load-exponent',
  title: 'Fit of this software to a printed load row of an LT235/85R16 radial',
  publisher: "row as printed in an owner's manual of 1990, maker not named",
  edition: '1990',
  standing: 'trade practice',
  scope:
    "A plausibility check. The tire maker's own table wins, and no pressure goes below its lowest row. Bias-ply tires follow about 0.585.",
};
/** L = Lmax (P / Pmax)^exponent for radial truck and light-truck tires. */
export const radialExponent: Supposed = {
  id: 'radial-exponent',
  what: 'exponent of load over pressure, radial truck tires',
  value: 0.7,
  unit: '1',
  plusOrMinus: 0.02,
  citations: [
    {
      source,
      clause: 'least squares',
      says: '0.7005 for singles and 0.7036 for duals; the printed row lies within 0.8 percent.',
      read: day('2026-11-24'),
    },
  ],
};
