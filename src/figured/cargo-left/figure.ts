// Why: the first question of a family: what may we load? The label and the scale give two answers, and the scale is the better.
import { isMotorized } from '../../catalogue/vehicle-kind.ts';
import type { Facts } from '../../known/facts.ts';
import { personWeight } from '../../standards/national-highway-traffic-safety-administration/belted-seats.ts';
import { waterWeight } from '../../standards/physics/plain.ts';
import { limitOn } from '../../standards/standard.ts';
import { dieselWeight, gasolineWeight, peopleAboard } from '../../standards/trade-practice/liquid-weights.ts';
import {
  cargoLabel,
  cargoLabelSince,
  labelWaterWeight,
} from '../../standards/us-code-of-federal-regulations/49-cfr-571-120-cargo.ts';
import { readDay } from '../../units/day.ts';
import type { FigureCard, Given, Have, Refused, Worked } from '../figure.ts';
import { firstOf, suppose, supposing, theOne } from '../look-up.ts';
import { mayHaveNumber, numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';
import { stillToAdd } from './still-to-add.ts';

function fuelWeight(facts: Facts): Given | undefined {
  const said = theOne(facts, 'engine', 'fuel');
  const words =
    said && said !== 'several' && said.standing === 'known' && said.value.is === 'text'
      ? said.value.text.toLowerCase()
      : '';
  if (words.includes('diesel') || facts.kind === 'class-a-diesel') return supposing(dieselWeight);
  if (/gas/.test(words) || facts.kind === 'class-a-gas') return supposing(gasolineWeight);
  return supposing(dieselWeight);
}

const show = (n: number): string => n.toFixed(0);

/** GVWR less the ticket, less what was not aboard when weighed. */
function byScale(have: Have, gvwr: number, scale: number): Worked {
  const notes: string[] = [];
  const parts: [string, number][] = [['weight on the ticket', scale]];
  const water = mayHaveNumber(have, 'water_to_add');
  if (water === undefined) notes.push('The size of the fresh tank is not known, so water is not counted.');
  else parts.push([`${show(water)} gal of water still to come`, water * numberOf(have, 'water_weight')]);
  const fuel = mayHaveNumber(have, 'fuel_to_add');
  if (fuel === undefined) notes.push('The size of the fuel tank is not known, so fuel is not counted.');
  else parts.push([`${show(fuel)} gal of fuel still to come`, fuel * numberOf(have, 'fuel_weight')]);
  const weighed = mayHaveNumber(have, 'people_weighed');
  if (weighed === undefined) notes.push('The ticket does not say who was aboard: nobody is supposed.');
  const people = Math.max(0, numberOf(have, 'people') - (weighed ?? 0));
  parts.push([`${people} more people`, people * numberOf(have, 'person')]);
  const tongue = mayHaveNumber(have, 'tongue');
  if (tongue !== undefined) parts.push(['tongue weight', tongue]);
  const left = parts.reduce((rest, [, lb]) => rest - lb, gvwr);
  if (mayHaveNumber(have, 'occc') !== undefined)
    notes.push(
      `The label says ${show(numberOf(have, 'occc'))} lb before people and water; the scale is the better witness.`,
    );
  return {
    value: left,
    working: [
      'by the scale',
      `weight rating ${show(gvwr)}`,
      ...parts.map(([what, lb]) => `less ${what}: ${show(lb)}`),
      `leaves ${show(left)} lb`,
    ],
    binds: 'scale',
    ...(notes.length > 0 ? { note: notes.join(' ') } : {}),
  };
}

/** The label less people, full water, additions and tongue. */
function byLabel(have: Have, occc: number): Worked | Refused {
  const on = readDay(String(have.on));
  const made = /\b(19|20)\d{2}\b/.exec(String(have.made ?? ''))?.[0];
  if (made !== undefined && Number(made) < Number(cargoLabelSince.slice(0, 4)))
    return { refused: 'old cargo label', detail: made, lacks: ['scale'] };
  if (on === undefined) return { refused: 'no day' };
  const parts: [string, number][] = [
    [`${numberOf(have, 'people')} people`, numberOf(have, 'people') * numberOf(have, 'person')],
  ];
  const fresh = mayHaveNumber(have, 'fresh');
  if (fresh !== undefined)
    parts.push([`${show(fresh)} gal of water`, fresh * limitOn(labelWaterWeight, on).value]);
  for (const [name, what] of [
    ['added', 'what was added since the label'],
    ['tongue', 'tongue weight'],
  ] as const) {
    const lb = mayHaveNumber(have, name);
    if (lb !== undefined) parts.push([what, lb]);
  }
  const left = parts.reduce((rest, [, lb]) => rest - lb, occc);
  return {
    value: left,
    working: [
      'by the label',
      `occupant and cargo carrying capacity ${show(occc)}`,
      ...parts.map(([what, lb]) => `less ${what}: ${show(lb)}`),
      `leaves ${show(left)} lb`,
    ],
    binds: 'label',
    note: `By the label only: batteries, solar, washer or tow gear added later are not in it. Weigh it.${fresh === undefined ? ' The size of the fresh tank is not known, so water is not counted.' : ''}`,
  };
}

function work(have: Have): Worked | Refused {
  const [gvwr, scale, occc] = [
    mayHaveNumber(have, 'gvwr'),
    mayHaveNumber(have, 'scale'),
    mayHaveNumber(have, 'occc'),
  ];
  if (gvwr !== undefined && scale !== undefined) return byScale(have, gvwr, scale);
  if (occc !== undefined) return byLabel(have, occc);
  return {
    refused: 'neither ticket nor label',
    lacks: [gvwr === undefined ? 'gvwr' : '', scale === undefined ? 'scale' : '', 'occc'].filter(Boolean),
  };
}

export const cargoLeft: FigureCard = {
  id: 'cargo-left',
  asks: 'How much can I load?',
  gives: { part: 'coach', aspect: 'cargo_left', unit: '[lb_av]' },
  needs: [
    {
      name: 'gvwr',
      what: 'gross vehicle weight rating',
      part: 'cert_label',
      aspect: 'gvwr',
      unit: '[lb_av]',
      optional: true,
      find: firstOf(['cert_label', 'gvwr'], ['coach', 'gvwr']),
    },
    {
      name: 'scale',
      what: 'weight on the scale ticket',
      part: 'scale_weight',
      aspect: 'total',
      unit: '[lb_av]',
      optional: true,
    },
    {
      name: 'occc',
      what: 'occupant and cargo carrying capacity on the label',
      part: 'cargo_label',
      aspect: 'occc',
      unit: '[lb_av]',
      optional: true,
    },
    {
      name: 'made',
      what: 'month and year made',
      part: 'cert_label',
      aspect: 'month_year_made',
      optional: true,
    },
    {
      name: 'people',
      what: 'people who ride along',
      part: 'supposed',
      aspect: 'people',
      unit: '1',
      find: suppose(peopleAboard),
    },
    {
      name: 'person',
      what: 'weight of a person',
      part: 'supposed',
      aspect: 'person_weight',
      unit: '[lb_av]',
      find: suppose(personWeight),
    },
    {
      name: 'people_weighed',
      what: 'people aboard when weighed',
      part: 'scale_weight',
      aspect: 'people',
      unit: '1',
      optional: true,
    },
    {
      name: 'fresh',
      what: 'fresh tank',
      part: 'fresh_tank',
      aspect: 'capacity',
      unit: '[gal_us]',
      optional: true,
    },
    {
      name: 'water_to_add',
      what: 'water not aboard when weighed',
      part: 'fresh_tank',
      aspect: 'capacity',
      unit: '[gal_us]',
      optional: true,
      find: stillToAdd('water_state', ['fresh_tank', 'capacity']),
    },
    {
      name: 'water_weight',
      what: 'weight of water',
      part: 'supposed',
      aspect: 'water_weight',
      unit: '[lb_av]/[gal_us]',
      find: suppose(waterWeight),
    },
    {
      name: 'fuel_to_add',
      what: 'fuel not aboard when weighed',
      part: 'fuel_tank',
      aspect: 'capacity',
      unit: '[gal_us]',
      optional: true,
      find: stillToAdd('fuel_state', ['fuel_tank', 'capacity']),
    },
    {
      name: 'fuel_weight',
      what: 'weight of fuel',
      part: 'supposed',
      aspect: 'fuel_weight',
      unit: '[lb_av]/[gal_us]',
      find: fuelWeight,
    },
    {
      name: 'added',
      what: 'added since the label',
      part: 'supposed',
      aspect: 'added_weight',
      unit: '[lb_av]',
      optional: true,
      find: () => undefined,
    },
    {
      name: 'tongue',
      what: 'tongue weight of what is towed',
      part: 'supposed',
      aspect: 'tongue_weight',
      unit: '[lb_av]',
      optional: true,
      find: () => undefined,
    },
  ],
  formula:
    'GVWR - weighed - water and fuel still to come - people not weighed; without a ticket: label capacity - people - full fresh water - additions - tongue weight',
  cites: [cargoLabel, ...personWeight.citations, ...waterWeight.citations],
  neglects:
    'Which axle the load falls on: an axle may be full before the coach is. Propane still to come (up to 100 lb), what sits in the waste tanks (8 lb a gallon). Labels from before June 2008 count otherwise and are refused.',
  appliesTo: (facts) => facts.kind === undefined || isMotorized(facts.kind),
  work,
  round: roundDown(10),
  checkedAgainst:
    'worked sums after 49 CFR 571.120 S10 (test/published/us-code-of-federal-regulations/cargo.test.ts)',
};
