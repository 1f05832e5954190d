// Why: the year on the listing is argued about most; the VIN says which years are possible and what would settle it.
import { isMotorized, vehicleKinds } from '../../catalogue/vehicle-kind.ts';
import { limitOn } from '../../standards/standard.ts';
import { practice } from '../../standards/trade-practice/practice.ts';
import {
  vinModelYear,
  vinPositionSeven,
  vinPositionSevenUpTo,
  vinRounds,
  vinYearCodes,
} from '../../standards/us-code-of-federal-regulations/49-cfr-565-15-vin.ts';
import { readDay } from '../../units/day.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { firstOf } from '../look-up.ts';
import { plainVin, sumVin } from '../vin-check/read-vin.ts';

const aheadAtMost = 1;
const motorized = new Set<string>(vehicleKinds.filter(isMotorized));

/** Both years of a code, earlier first; undefined for a character that is no year code. */
function yearsOf(code: string): readonly [number, number] | undefined {
  const place = vinYearCodes.rows.indexOf(code);
  return place < 0 ? undefined : [vinRounds[0] + place, vinRounds[1] + place];
}

/** What position 7 says, where it says anything: 0 the earlier round, 1 the later. */
function roundBySeven(have: Have, seven: string): 0 | 1 | undefined {
  const on = readDay(String(have.on));
  if (typeof have.gvwr !== 'number' || on === undefined || !motorized.has(String(have.kind)))
    return undefined;
  if (have.gvwr > limitOn(vinPositionSevenUpTo, on).value) return undefined;
  return /\d/.test(seven) ? 0 : 1;
}

function work(have: Have): Worked | Refused {
  const vin = plainVin(String(have.vin));
  const code = vin[9];
  const years = vin.length === 17 && code !== undefined ? yearsOf(code) : undefined;
  if (!years || code === undefined) return { refused: 'no model year code', detail: code ?? '' };
  const working = [`position 10 is ${code}: ${years[0]} or ${years[1]}`];
  const latest = Number(String(have.on).slice(0, 4)) + aheadAtMost;
  let left: readonly number[] = years.filter((y) => y <= latest);
  if (left.length === 1) working.push(`${years[1]} has not come yet`);

  const round = roundBySeven(have, vin[6]!);
  if (round !== undefined && left.includes(years[round])) {
    left = [years[round]];
    working.push(`position 7 is ${vin[6]}, and up to 10,000 lb that means ${years[round]}`);
  } else if (left.length > 1)
    working.push(
      'position 7 proves nothing here: above 10,000 lb, a trailer, or the weight rating is not known',
    );

  const notes: string[] = [];
  const label = Number(have.label);
  if (left.includes(label) && left.length > 1) {
    left = [label];
    working.push(`the chassis label says ${label}`);
  } else if (Number.isInteger(label) && !left.includes(label))
    notes.push(`The chassis label says ${label}, which this VIN cannot be.`);
  if (left.length > 1) notes.push('The label or the title settles it.');
  if (!sumVin(vin)?.passes)
    notes.push('The check digit of this VIN fails: read it again before leaning on the year.');
  notes.push(
    'Of a vehicle built in stages this is the year of the chassis; the coach may be a year or more newer.',
  );
  return { value: left.join(' or '), working, note: notes.join(' ') };
}

export const modelYear: FigureCard = {
  id: 'model-year',
  asks: 'What year is it really?',
  gives: { part: 'vin_plate', aspect: 'model_year' },
  needs: [
    { name: 'vin', what: 'VIN', part: 'vin_plate', aspect: 'vin' },
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
      name: 'label',
      what: 'model year on the chassis label',
      part: 'chassis_label',
      aspect: 'chassis_year',
      optional: true,
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
    'position 10 read in the table of year codes, both rounds of 30 years; position 7 settles the round up to 10,000 lb GVWR',
  cites: [
    vinModelYear,
    vinPositionSeven,
    practice("Next year's model may be sold this year, so a year more than one ahead is ruled out."),
  ],
  neglects:
    'The year of the coach body, which may be a year or two newer than the chassis; VINs from before 1981.',
  work,
  checkedAgainst:
    'the year table of 49 CFR 565.15 and its rule on position 7 (test/published/us-code-of-federal-regulations/vin.test.ts)',
};
