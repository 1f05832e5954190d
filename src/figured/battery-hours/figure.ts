// Why: "good batteries" becomes hours with the lights on.
import type { Facts } from '../../known/facts.ts';
import type { Supposed } from '../../standards/supposed.ts';
import {
  type Chemistry,
  houseLoad,
  inverterEfficiency,
  inverterIdle,
  peukertExponent,
  ratedOver,
  usableShare,
  workingVolts,
} from '../../standards/trade-practice/house-power.ts';
import { practice } from '../../standards/trade-practice/practice.ts';
import type { FigureCard, Given, Have, Refused, Worked } from '../figure.ts';
import { suppose, supposing, theOne } from '../look-up.ts';
import { roundDown } from '../round-carefully.ts';
import { chemistryOf } from './read-chemistry.ts';

const byChemistry =
  (table: Readonly<Record<Chemistry, Supposed>>) =>
  (facts: Facts): Given | undefined => {
    const said = theOne(facts, 'house_battery', 'chemistry');
    if (
      said === undefined ||
      said === 'several' ||
      said.standing !== 'known' ||
      said.doubts.includes('hearsay')
    )
      return undefined;
    const chemistry = said.value.is === 'text' ? chemistryOf(said.value.text) : undefined;
    return chemistry && supposing(table[chemistry]);
  };

function work(have: Have): Worked | Refused {
  const [count, each, volts] = [Number(have.count), Number(have.each), Number(have.volts)];
  const draw = Number(have.load) / Number(have.efficiency) + Number(have.idle);
  const charge = count * each;
  if (!(charge > 0 && volts > 0 && draw > 0)) return { refused: 'nothing to work with' };
  const current = draw / volts;
  const rated = Number(have.rated_over);
  const ideal = charge / current;
  const lost = Math.max(1, (current * rated) / charge) ** (Number(have.peukert) - 1);
  const hours = (Number(have.usable) * ideal) / lost;
  return {
    value: hours,
    working: [
      `${count} x ${each.toFixed(0)} Ah = ${charge.toFixed(0)} Ah at ${volts.toFixed(1)} V`,
      `${Number(have.load).toFixed(0)} W / ${Number(have.efficiency).toFixed(2)} + ${Number(have.idle).toFixed(0)} W = ${draw.toFixed(0)} W, ${current.toFixed(1)} A`,
      `${charge.toFixed(0)} Ah / ${current.toFixed(1)} A = ${ideal.toFixed(2)} h; divided by ${lost.toFixed(3)} for the current; x ${Number(have.usable).toFixed(2)} usable = ${hours.toFixed(2)} h`,
    ],
    note: 'For batteries as good as new. A load test tells what is left; lead over four years old often has 70 percent.',
  };
}

export const batteryHours: FigureCard = {
  id: 'battery-hours',
  asks: 'How long can I run on the batteries?',
  gives: { part: 'house_battery', aspect: 'run_time', unit: 'h' },
  needs: [
    { name: 'count', what: 'number of 12 V batteries', part: 'house_battery', aspect: 'count', unit: '1' },
    { name: 'each', what: 'capacity of each', part: 'house_battery', aspect: 'capacity_each', unit: 'A.h' },
    {
      name: 'chemistry',
      what: 'kind of battery',
      part: 'house_battery',
      aspect: 'chemistry',
    },
    {
      name: 'usable',
      what: 'usable share (by kind of battery)',
      part: 'house_battery',
      aspect: 'chemistry',
      unit: '1',
      find: byChemistry(usableShare),
    },
    {
      name: 'volts',
      what: 'working voltage (by kind of battery)',
      part: 'house_battery',
      aspect: 'chemistry',
      unit: 'V',
      find: byChemistry(workingVolts),
    },
    {
      name: 'peukert',
      what: 'Peukert exponent (by kind of battery)',
      part: 'house_battery',
      aspect: 'chemistry',
      unit: '1',
      find: byChemistry(peukertExponent),
    },
    {
      name: 'rated_over',
      what: 'hours of the rating',
      part: 'supposed',
      aspect: 'rated_over',
      unit: 'h',
      find: suppose(ratedOver),
    },
    {
      name: 'load',
      what: 'steady load',
      part: 'supposed',
      aspect: 'house_load',
      unit: 'W',
      find: suppose(houseLoad),
    },
    {
      name: 'efficiency',
      what: 'efficiency of the inverter',
      part: 'supposed',
      aspect: 'inverter_efficiency',
      unit: '1',
      find: suppose(inverterEfficiency),
    },
    {
      name: 'idle',
      what: 'draw of the inverter itself',
      part: 'supposed',
      aspect: 'inverter_idle',
      unit: 'W',
      find: suppose(inverterIdle),
    },
  ],
  formula:
    'hours = usable x H x (C / (I H))^k, C = count x Ah, I = (load / efficiency + idle) / volts; below the rated current k counts as 1',
  cites: [
    practice(
      'Peukert: the charge a lead battery gives falls with the current, measured against the current of its rating.',
    ),
  ],
  neglects:
    'Age and cold: lead over four years may have 70 percent left; near freezing another 20 to 30 percent is lost. 6 V batteries in pairs count as one of 12 V.',
  work,
  round: roundDown(0.1),
  checkedAgainst:
    'worked Peukert cases (test/published/battery-maker/charge.test.ts); nobody publishes a whole worked coach',
};
