// Why: a manager has one minute: which repairs cost most, and which faults each of them mends.
import type { Finding } from '../../judged/finding.ts';
import type { Job } from '../../planned/job.ts';
import { partName, partNames, subjectTitle } from '../../published/plain-subject.ts';
import { dollars } from '../../units/money.ts';
import { sayAsked } from '../words/say-asked.ts';
import { sayMoneyRange } from '../words/say-money-range.ts';
import { numberRuns } from './number-runs.ts';

export interface CostLine {
  readonly what: string;
  readonly cost: string;
  /** Numbers of the faults it mends. */
  readonly numbers: string;
}

/** Outward to ten dollars: an estimate to the cent says more than anybody knows. */
const tens = ([low, high]: NonNullable<Job['cost']>): string =>
  sayMoneyRange([dollars(Math.floor(low / 1000) * 10), dollars(Math.ceil(high / 1000) * 10)]);

const priced = (jobs: readonly Job[]): readonly (Job & { readonly cost: NonNullable<Job['cost']> })[] =>
  jobs.flatMap((j) => (j.cost === undefined ? [] : [{ ...j, cost: j.cost }]));

/** The jobs with an estimate, costliest first. */
export function costliest(
  jobs: readonly Job[],
  numbers: ReadonlyMap<string, number>,
  most: number,
): readonly CostLine[] {
  return priced(jobs)
    .toSorted((a, b) => b.cost[1] - a.cost[1] || (a.id < b.id ? -1 : 1))
    .slice(0, most)
    .map((j) => {
      const [place] = j.places;
      const whose =
        j.places.length > 1
          ? partNames(j.part)
          : place === undefined
            ? partName(j.part)
            : subjectTitle({ part: j.part, place });
      return {
        what: `${whose}: ${j.what.charAt(0).toLowerCase()}${j.what.slice(1)}`,
        cost: tens(j.cost),
        numbers: numberRuns(j.findings.flatMap((id) => numbers.get(id) ?? [])),
      };
    });
}

/** "Replace tires, axle set or all: $3,060 to $5,650". Empty where a job of these findings has no estimate. */
export function costOf(findings: readonly Finding[], jobs: readonly Job[]): string {
  const mine = jobs.filter((j) => j.findings.some((id) => findings.some((f) => f.id === id)));
  return priced(mine)
    .map((j) => `${j.what}: ${tens(j.cost)}`)
    .join('; ');
}

/** Who asked on the walk for the jobs of these findings: "Dana: “I would reseal that”". Empty where nobody did. */
export function askedOf(findings: readonly Finding[], jobs: readonly Job[]): string {
  const asked = jobs
    .filter((j) => j.findings.some((id) => findings.some((f) => f.id === id)))
    .flatMap((j) => j.asked ?? []);
  return [...new Set(asked.map(sayAsked))].join('; ');
}
