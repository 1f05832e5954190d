// Why: a row's time is an instant with its offset, or a time into the recording; anything else would be a guess.
import { readDay } from '../../units/day.ts';

const instant =
  /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d+)?)?(Z|[+-]([01]\d|2[0-3]):[0-5]\d)$/;
const clock = /^(?:(\d{1,2}):)?(\d{1,3}):(\d{2}(?:\.\d+)?)$/;

/**
 * An ISO 8601 instant with its offset, on a day that exists, as the log takes it: seconds are put in where they were left
 * out. Undefined for anything else, and for years before 1970 or after 2199, in which nobody walked.
 */
export function readInstant(text: string): string | undefined {
  const m = instant.exec(text);
  if (!m || readDay(m[1]!) === undefined || m[1]! < '1970-01-02' || m[1]! > '2199') return undefined;
  return m[3] === undefined ? text.replace(/(T\d\d:\d\d)/, '$1:00') : text;
}

/** True for an instant that the log takes as it is written. */
export const isInstant = (text: string): boolean => readInstant(text) === text;

/** An instant so many seconds later, with the same offset, to the millisecond. */
export function addSeconds(to: string, seconds: number): string {
  const offset = /(Z|[+-]\d{2}:\d{2})$/.exec(to)?.[1] ?? 'Z';
  const minutes =
    offset === 'Z'
      ? 0
      : (offset.startsWith('-') ? -1 : 1) * (Number(offset.slice(1, 3)) * 60 + Number(offset.slice(4)));
  const local = new Date(Date.parse(to) + Math.round(seconds * 1000) + minutes * 60_000);
  return local.toISOString().slice(0, -1) + offset;
}

/**
 * The instant that a cell means, or undefined when it means none.
 * @param began the instant at which the walk began, ISO 8601; used for "12:41" and "1:02:03", which count from there
 */
export function readWhen(cell: string, began: string): string | undefined {
  const text = cell.trim().replace(/^(\d{4}-\d{2}-\d{2}) /, '$1T');
  const instantSaid = readInstant(text);
  if (instantSaid !== undefined) return instantSaid;
  const m = clock.exec(text);
  if (!m) return undefined;
  return addSeconds(began, Number(m[1] ?? 0) * 3600 + Number(m[2]) * 60 + Number(m[3]));
}
