// Why: miles and hours are spread over the years in the same way.
import { readDay, yearsBetween } from '../../units/day.ts';
import type { Have, Refused, Worked } from '../figure.ts';
import { numberOf } from '../number-of.ts';

const halfAYear = 0.5;

/** A total over the years since the model year began, at least one; its own doubt is half a year either way. */
export const aYear =
  (unit: string) =>
  (have: Have): Worked | Refused => {
    const on = readDay(String(have.on));
    const year = numberOf(have, 'year');
    const from = Number.isInteger(year) ? readDay(`${year}-01-01`) : undefined;
    if (on === undefined || from === undefined)
      return { refused: 'no such model year', detail: String(year) };
    const years = yearsBetween(from, on);
    if (years < 1) return { refused: 'less than a year old' };
    const each = numberOf(have, 'total') / years;
    return {
      value: each,
      ownDoubt: (each * halfAYear) / years,
      working: [
        `${numberOf(have, 'total').toFixed(0)} ${unit} / ${years.toFixed(1)} years = ${each.toFixed(0)} a year`,
      ],
    };
  };
