// Why: "12.4 volts" says something only against a table, and only for a rested lead battery.
import {
  agmVoltageHigh,
  agmVoltageLow,
  type ChargeRow,
  floodedVoltage,
  notRestedAbove,
  voltsForTenDegrees,
} from '../../standards/references/resting-voltage.ts';
import { chemistryOf } from '../battery-hours/read-chemistry.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

/** Charge in percent by a table of rising voltage; between rows in a straight line, flat beyond the ends. */
export function chargeAt(volts: number, rows: readonly ChargeRow[]): number {
  const above = rows.findIndex((r) => r.volts >= volts);
  if (above === 0) return rows[0]!.percent;
  if (above < 0) return rows.at(-1)!.percent;
  const [low, high] = [rows[above - 1]!, rows[above]!];
  return low.percent + ((volts - low.volts) / (high.volts - low.volts)) * (high.percent - low.percent);
}

const slope = (rows: readonly ChargeRow[]): number =>
  (rows.at(-1)!.percent - rows[0]!.percent) / (rows.at(-1)!.volts - rows[0]!.volts);

function work(have: Have): Worked | Refused {
  const volts = numberOf(have, 'volts');
  const chemistry = chemistryOf(String(have.chemistry));
  if (chemistry === undefined)
    return { refused: 'kind of battery not known', detail: String(have.chemistry) };
  if (chemistry === 'lithium iron phosphate') return { refused: 'voltage too flat', detail: chemistry };
  if (volts < 10) return { refused: 'not a 12 V battery', detail: volts.toFixed(2) };
  if (volts > notRestedAbove) return { refused: 'not rested', detail: volts.toFixed(2) };
  const temperature = voltsForTenDegrees * 2 * slope(floodedVoltage.rows);
  if (chemistry === 'flooded') {
    const charge = chargeAt(volts, floodedVoltage.rows);
    return {
      value: charge,
      ownDoubt: temperature,
      working: [`${volts.toFixed(2)} V in the table of flooded batteries: ${charge.toFixed(0)} percent`],
    };
  }
  const [high, low] = [chargeAt(volts, agmVoltageLow.rows), chargeAt(volts, agmVoltageHigh.rows)];
  return {
    value: (high + low) / 2,
    ownDoubt: Math.hypot((high - low) / 2, temperature),
    working: [
      `${volts.toFixed(2)} V: ${low.toFixed(0)} percent by one table, ${high.toFixed(0)} by the other`,
    ],
    note: "Published tables for sealed batteries disagree by 0.2 V; the maker's own decides.",
  };
}

export const batteryCharge: FigureCard = {
  id: 'battery-charge',
  asks: 'How full are the batteries?',
  gives: { part: 'house_battery', aspect: 'charge', unit: '%' },
  needs: [
    { name: 'volts', what: 'voltage at rest', part: 'house_battery', aspect: 'rest_voltage', unit: 'V' },
    { name: 'chemistry', what: 'kind of battery', part: 'house_battery', aspect: 'chemistry' },
  ],
  formula: 'charge read off the published table of resting voltages, in a straight line between its rows',
  cites: [floodedVoltage.citation, agmVoltageHigh.citation],
  neglects:
    'The temperature of the battery: 20 F either way is carried as plus-or-minus (about 6 percent). Less than two hours of rest, which reads high. Health: a worn battery is full sooner.',
  work,
  round: roundDown(1),
  checkedAgainst:
    'the rows of the table and a point between them (test/published/battery-maker/charge.test.ts)',
};
