// Why: a coach stops on its oldest tire, so the oldest one is the headline and the unread ones are counted.
import { placeName } from '../../catalogue/place.ts';
import type { Fact, Facts } from '../../known/facts.ts';
import { practice } from '../../standards/trade-practice/practice.ts';
import { tireDateCode } from '../../standards/us-code-of-federal-regulations/49-cfr-574-5-tire-code.ts';
import { convert } from '../../units/quantity.ts';
import { unitFact } from '../../units/unit.ts';
import type { FigureCard, Have, Worked } from '../figure.ts';
import { givenBy } from '../look-up.ts';
import { roundUp } from '../round-carefully.ts';

const yearsOf = (f: Fact): number | undefined =>
  f.value.is === 'quantity' && unitFact(f.value.unit).dimension === 'time'
    ? convert(f.value.value, f.value.unit, 'a')
    : undefined;

/** Ages that may be leaned on: out of a code, or plainly known. */
const ages = (facts: Facts): readonly Fact[] =>
  facts
    .all('tire', 'age')
    .filter(
      (f) =>
        f.standing === 'known' &&
        yearsOf(f) !== undefined &&
        !f.doubts.includes('hearsay') &&
        (f.figure !== undefined || f.place !== undefined),
    );

const oldestOf = (facts: Facts): Fact | undefined =>
  ages(facts).reduce<Fact | undefined>(
    (old, f) => (old && yearsOf(old)! >= yearsOf(f)! ? old : f),
    undefined,
  );

const tirePlaces = (facts: Facts): ReadonlySet<string> =>
  new Set(facts.of('tire').flatMap((f) => (f.place === undefined ? [] : [f.place])));

function work(have: Have): Worked {
  const dated = Number(have.dated ?? 1);
  const undated = Number(have.undated ?? 0);
  return {
    value: Number(have.oldest),
    working: [`oldest of ${dated} dated ${dated === 1 ? 'tire' : 'tires'}`],
    ...(have.where === undefined ? {} : { binds: String(have.where) }),
    ...(undated > 0
      ? {
          note: `${undated} more spoken of without a date: one of them may be older. Read the code; it may be on the inner side.`,
        }
      : {}),
  };
}

export const oldestTire: FigureCard = {
  id: 'oldest-tire',
  asks: 'How old are the tires?',
  gives: { part: 'tire', aspect: 'oldest_age', unit: 'a' },
  needs: [
    {
      name: 'oldest',
      what: 'age of the oldest tire with a date',
      part: 'tire',
      aspect: 'age',
      unit: 'a',
      find: (facts) => {
        const f = oldestOf(facts);
        return f && givenBy(f);
      },
    },
    {
      name: 'where',
      what: 'where it is',
      part: 'tire',
      aspect: 'age',
      optional: true,
      find: (facts) => {
        const place = oldestOf(facts)?.place;
        return place === undefined
          ? undefined
          : { value: { is: 'text', text: placeName(place) }, from: 'figured' };
      },
    },
    {
      name: 'dated',
      what: 'tires with a date',
      part: 'tire',
      aspect: 'age',
      unit: '1',
      optional: true,
      find: (facts) => ({ value: { is: 'count', count: ages(facts).length }, from: 'figured' }),
    },
    {
      name: 'undated',
      what: 'tires spoken of without a date',
      part: 'tire',
      aspect: 'age',
      unit: '1',
      optional: true,
      find: (facts) => {
        const dated = new Set(ages(facts).map((f) => f.place));
        return {
          value: { is: 'count', count: [...tirePlaces(facts)].filter((p) => !dated.has(p)).length },
          from: 'figured',
        };
      },
    },
  ],
  formula: 'the greatest of the ages of all tires with a date',
  cites: [tireDateCode, practice('The oldest tire speaks for the coach.')],
  neglects: 'Tires nobody read: counted beside the answer, never taken as younger. The spare.',
  work,
  round: roundUp(0.1),
  checkedAgainst: 'nobody publishes this: it is the greatest of ages that are checked one by one',
};
