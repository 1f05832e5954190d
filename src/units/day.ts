// Why: ages and due dates are counted in calendar days; a clock and its time zone have no say in them.

/** A calendar day, "YYYY-MM-DD" (ISO 8601). */
export type Day = string & { readonly day: unique symbol };

const pattern = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Days since 1970-01-01 of a proleptic Gregorian date (Howard Hinnant's days_from_civil, from memory). */
function daysFromCivil(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}

/** Reads a day; undefined when the text is not a day that exists. */
export function readDay(text: string): Day | undefined {
  const m = pattern.exec(text);
  if (!m) return undefined;
  const day = dayFromNumber(daysFromCivil(Number(m[1]), Number(m[2]), Number(m[3])));
  return day === text ? day : undefined;
}

/** A day that is known to exist. Throws otherwise: for data and tests, not for what people type. */
export function day(text: string): Day {
  const read = readDay(text);
  if (read === undefined) throw new RangeError(`day: "${text}" is not a calendar day (YYYY-MM-DD)`);
  return read;
}

/** Days since 1970-01-01. */
export function dayNumber(of: Day): number {
  return daysFromCivil(Number(of.slice(0, 4)), Number(of.slice(5, 7)), Number(of.slice(8, 10)));
}

/** The day that is so many days after 1970-01-01 (civil_from_days, from memory). */
export function dayFromNumber(n: number): Day {
  const z = n + 719468;
  const era = Math.floor(z / 146097);
  const doe = z - era * 146097;
  const yoe = Math.floor(
    (doe - Math.floor(doe / 1460) + Math.floor(doe / 36524) - Math.floor(doe / 146096)) / 365,
  );
  const doy = doe - (365 * yoe + Math.floor(yoe / 4) - Math.floor(yoe / 100));
  const mp = Math.floor((5 * doy + 2) / 153);
  const d = doy - Math.floor((153 * mp + 2) / 5) + 1;
  const m = mp < 10 ? mp + 3 : mp - 9;
  const y = yoe + era * 400 + (m <= 2 ? 1 : 0);
  return `${String(y).padStart(4, '0')}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}` as Day;
}

/** Whole days from one day to another; negative when the second is earlier. */
export const daysBetween = (from: Day, to: Day): number => dayNumber(to) - dayNumber(from);

/** The day so many days later. */
export const addDays = (from: Day, days: number): Day => dayFromNumber(dayNumber(from) + days);

/** Years from one day to another, in mean Gregorian years of 365.2425 days. */
export const yearsBetween = (from: Day, to: Day): number => daysBetween(from, to) / 365.2425;

/** 0 = Sunday ... 6 = Saturday. */
export const weekday = (of: Day): number => (((dayNumber(of) + 4) % 7) + 7) % 7;

/** The calendar day of an instant ("2026-11-24T18:05:00Z" -> 2026-11-24), as written, in the writer's own offset. */
export const dayOf = (instant: string): Day => day(instant.slice(0, 10));
