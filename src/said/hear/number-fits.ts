// Why: of all that "thirteen five" may mean, an aspect believes what its unit and its range allow.
import type { Aspect } from '../../catalogue/part.ts';
import { convert, isSameDimension } from '../../units/quantity.ts';
import type { Unit } from '../../units/unit.ts';
import type { Reading } from './number-reading.ts';

/** Miles and inches are both lengths, but never of the same thing. */
export const isRoad = (u: Unit): boolean => u === '[mi_i]' || u === 'km';
export const isNumeric = (a: Aspect): boolean => a.kind === 'quantity' || a.kind === 'count';

/** Readings in the unit of an aspect that its range believes, the likeliest first. */
export function fits(
  readings: readonly Reading[],
  a: Aspect,
  said: { units: readonly Unit[]; times: number; loose?: true } | undefined,
  usual: (unit: Unit) => Unit | undefined,
): { value: number; unit: Unit } | undefined {
  const metric = a.unit && (!said || said.units[0] === '[degF]') ? usual(a.unit) : undefined;
  for (const r of readings) {
    const options: { value: number; unit: Unit }[] = [];
    if (metric) options.push({ value: r.value, unit: metric });
    if (a.unit === undefined) {
      if (!said && Number.isInteger(r.value)) options.push({ value: r.value, unit: '1' });
    } else if (said?.loose) {
      if (a.unit === 'kW' || a.unit === 'W') options.push({ value: r.value, unit: 'kW' });
      else options.push({ value: r.value * 1000, unit: a.unit });
    } else if (said) {
      const water = a.unit === "[in_i'H2O]" && said.units[0] === '[in_i]';
      if (
        isRoad(a.unit) !== isRoad(said.units[0] as Unit) &&
        (isRoad(a.unit) || isRoad(said.units[0] as Unit))
      )
        continue;
      const unit = water ? a.unit : said.units.find((u) => isSameDimension(u, a.unit as Unit));
      if (unit) options.push({ value: r.value * said.times, unit });
    } else {
      // "half" on a gauge is half of a hundred
      if (a.unit === '%' && r.value > 0 && r.value < 1) options.push({ value: r.value * 100, unit: '%' });
      options.push({ value: r.value, unit: a.unit });
      // "five five" is kilowatts, "fifty-five hundred" is watts
      if (a.unit === 'kW') options.push({ value: r.value, unit: 'W' });
      if (a.unit === '[Btu]/h' && r.value >= 5 && r.value <= 80)
        options.push({ value: r.value * 1000, unit: a.unit });
      if (a.unit === 'g/mL') options.push({ value: r.value / 1000, unit: a.unit });
    }
    for (const o of options) {
      const inOwn = a.unit === undefined ? o.value : convert(o.value, o.unit, a.unit);
      if (!a.within || (inOwn >= a.within[0] - 1e-9 && inOwn <= a.within[1] + 1e-9)) return o;
    }
  }
  return undefined;
}
