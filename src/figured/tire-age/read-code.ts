// Why: the date in a tire's code, in one place.
import {
  tireFourDigitsFrom,
  tireLastWeek,
} from '../../standards/us-code-of-federal-regulations/49-cfr-574-5-tire-code.ts';
import { addDays, type Day, day, weekday } from '../../units/day.ts';
import type { Refused } from '../figure.ts';

/** The week a tire was made in; `atLeast` when only the newest possible decade is known. */
export interface TireWeek {
  readonly starts: Day;
  readonly ends: Day;
  readonly atLeast: boolean;
}

/** The first Sunday of a year: where its first full week, Sunday to Saturday, begins. */
export function firstSunday(year: number): Day {
  const first = day(`${year}-01-01`);
  return addDays(first, (7 - weekday(first)) % 7);
}

function weekOf(week: number, year: number, atLeast: boolean): TireWeek | Refused {
  if (week < 1 || week > tireLastWeek)
    return { refused: 'no such week', detail: String(week).padStart(2, '0') };
  const starts = addDays(firstSunday(year), 7 * (week - 1));
  if (Number(starts.slice(0, 4)) !== year) return { refused: 'no such week', detail: `${week} of ${year}` };
  return { starts, ends: addDays(starts, 6), atLeast };
}

/** Reads the last group of a tire identification number: WWYY, or the three digits WWY of tires made before 2000. */
export function readTireCode(text: string, on: Day): TireWeek | Refused {
  const group =
    text
      .toUpperCase()
      .match(/[0-9A-Z]+/g)
      ?.at(-1) ?? '';
  const four = /(\d{2})(\d{2})$/.exec(group);
  if (four) {
    const made = weekOf(Number(four[1]), tireFourDigitsFrom + Number(four[2]), false);
    return 'starts' in made && made.starts > on
      ? { refused: 'made in the future', detail: made.starts }
      : made;
  }
  const three = /^[A-Z]*(\d{2})(\d)$/.exec(group);
  if (three) return weekOf(Number(three[1]), tireFourDigitsFrom - 10 + Number(three[2]), true);
  return { refused: 'no date code', detail: text };
}
