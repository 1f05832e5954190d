// Why: a sale without a required odometer statement comes back; one with a needless one is only paper.
import { isMotorized, vehicleKinds } from '../../catalogue/vehicle-kind.ts';
import type { Facts } from '../../known/facts.ts';
import { limitOn } from '../../standards/standard.ts';
import {
  odometerExemptions,
  odometerExemptOver,
  odometerLastOlderYear,
  odometerYearsNewer,
  odometerYearsOlder,
} from '../../standards/us-code-of-federal-regulations/49-cfr-580-17-odometer.ts';
import { readDay } from '../../units/day.ts';
import type { FigureCard, Given, Have, Refused, Worked } from '../figure.ts';
import { firstOf } from '../look-up.ts';
import { mayHaveNumber } from '../number-of.ts';

/** The model year by label, papers or a VIN that leaves only one. */
function yearBy(facts: Facts): Given | undefined {
  const said = firstOf(['chassis_label', 'chassis_year'], ['coach', 'year'])(facts, undefined);
  if (said?.fact && said.fact.standing !== 'unknown') return said;
  const byVin = facts.get('vin_plate', 'model_year');
  if (byVin?.value.is === 'text' && /^\d{4}$/.test(byVin.value.text))
    return { value: byVin.value, from: 'figured', fact: byVin };
  return said;
}

function work(have: Have): Worked | Refused {
  const on = readDay(String(have.on));
  if (on === undefined) return { refused: 'no day' };
  const note = 'Exempt is not leave to misstate the mileage, and states may ask more.';
  const kind = vehicleKinds.find((k) => k === have.kind);
  if (kind && !isMotorized(kind)) return { value: 'exempt', working: ['not self-propelled'], note };
  const gvwr = mayHaveNumber(have, 'gvwr');
  if (gvwr !== undefined && gvwr > limitOn(odometerExemptOver, on).value)
    return { value: 'exempt', working: ['over 16,000 lb GVWR'], note };
  const year = mayHaveNumber(have, 'year');
  if (year === undefined)
    return { refused: 'model year not known', lacks: gvwr === undefined ? ['gvwr', 'year'] : ['year'] };
  const years = limitOn(year <= odometerLastOlderYear ? odometerYearsOlder : odometerYearsNewer, on).value;
  const ends = `${year + years}-01-01`;
  if (on >= ends)
    return { value: 'exempt', working: [`model year ${year}: ${years} years ended on ${ends}`], note };
  if (gvwr === undefined) return { refused: 'weight rating not known', lacks: ['gvwr'] };
  return {
    value: 'needed',
    working: ['16,000 lb GVWR or less, self-propelled', `model year ${year}: needed until ${ends}`],
    note: 'States may ask more.',
  };
}

export const odometerDisclosure: FigureCard = {
  id: 'odometer-disclosure',
  asks: 'Is an odometer statement needed?',
  gives: { part: 'odometer', aspect: 'disclosure' },
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
      name: 'year',
      what: 'model year',
      part: 'vin_plate',
      aspect: 'model_year',
      unit: '1',
      optional: true,
      find: yearBy,
    },
    {
      name: 'kind',
      what: 'kind of vehicle',
      part: 'supposed',
      aspect: 'kind',
      optional: true,
      find: (facts) => (facts.kind ? { value: { is: 'text', text: facts.kind }, from: 'given' } : undefined),
    },
  ],
  formula:
    'exempt: over 16,000 lb GVWR, or not self-propelled, or 10 years (model year 2010 and older) or 20 years (2011 and newer) after 1 January of the model year',
  cites: [odometerExemptions],
  neglects:
    'State law, which may ask a statement where federal law does not. Of a coach built in stages the year of the chassis is taken first.',
  work,
  checkedAgainst:
    'cases of 49 CFR 580.17 with its two dates (test/published/us-code-of-federal-regulations/odometer.test.ts)',
};
