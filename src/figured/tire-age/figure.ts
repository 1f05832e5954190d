// Why: "the tires look good" is not an age; the code on the sidewall is.
import {
  tireDateCode,
  tireThreeDigitCode,
} from '../../standards/us-code-of-federal-regulations/49-cfr-574-5-tire-code.ts';
import { daysBetween, readDay } from '../../units/day.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { roundUp } from '../round-carefully.ts';
import { readTireCode } from './read-code.ts';

/** Days in the unit "a". */
const daysInYear = 365.25;

function work(have: Have): Worked | Refused {
  const on = readDay(String(have.on));
  if (on === undefined) return { refused: 'no day' };
  const made = readTireCode(String(have.code), on);
  if ('refused' in made) return made;
  const days = daysBetween(made.starts, on);
  return {
    value: days / daysInYear,
    ownDoubt: 7 / daysInYear,
    working: [
      `made in the week of ${made.starts} to ${made.ends}`,
      `${days} days to ${on} / ${daysInYear} = ${(days / daysInYear).toFixed(2)} years`,
    ],
    ...(made.atLeast
      ? { note: 'At least this old: three digits mean made before 2000, and the decade is not in the code.' }
      : {}),
  };
}

export const tireAge: FigureCard = {
  id: 'tire-age',
  asks: 'How old is this tire?',
  each: 'tire',
  gives: { part: 'tire', aspect: 'age', unit: 'a' },
  needs: [{ name: 'code', what: 'date code (week and year)', part: 'tire', aspect: 'tin' }],
  formula: 'age = day asked - Sunday of week WW of year YY, in years of 365.25 days',
  cites: [tireDateCode, tireThreeDigitCode],
  neglects:
    'The day within the week: up to 7 days, carried as the plus-or-minus. How the tire was kept, which matters as much as its age.',
  work,
  round: roundUp(0.1),
  checkedAgainst:
    'the example of 49 CFR 574.5 and rows worked out by its rule (test/published/us-code-of-federal-regulations/tire-code.test.ts)',
};
