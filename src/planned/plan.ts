// Why: findings become work: one job per defect with all its places, in the order in which it must be done.
import type { Finding } from '../judged/finding.ts';
import { badness } from '../judged/verdict.ts';
import type { EntryOf, Observation } from '../said/entry.ts';
import { type Cents, cents } from '../units/money.ts';
import { askedFor } from './asked-for.ts';
import { costOf } from './cost-of.ts';
import type { DefectWork } from './defect-work.ts';
import type { Job } from './job.ts';
import { matchDefect } from './match-defect.ts';
import { workOrders } from './work-order.ts';

/**
 * The jobs that findings ask for, worst verdict first, then in the order of the defects' list. Findings with the verdict
 * stop or repair ask for work; watch asks for optional work. Cost only where the shop's own labor rates are known. A finding
 * with no usual work becomes a job to look and quote, without hours: none are made up. A job that somebody asked for on the
 * walk says so; a wish that is of no finding makes no job.
 */
export function plan(
  findings: readonly Finding[],
  shop: EntryOf<'shop'> | undefined,
  wishes: readonly Observation[] = [],
): readonly Job[] {
  const groups = new Map<string, { readonly row: DefectWork | undefined; readonly of: Finding[] }>();
  for (const finding of findings) {
    if (finding.verdict === 'sound' || finding.verdict === 'not seen') continue;
    const row = matchDefect(finding);
    const id = row?.id ?? `look-${finding.part}`;
    const group = groups.get(id);
    if (group) group.of.push(finding);
    else groups.set(id, { row, of: [finding] });
  }
  const present = new Set(groups.keys());
  const asked = askedFor(new Map([...groups].map(([id, { of }]) => [id, of])), wishes);
  const withAsked = (job: Job): Job => {
    const by = asked.get(job.id);
    return by === undefined ? job : { ...job, asked: by };
  };
  return [...groups]
    .map(([id, { row, of }]) => ({
      worst: worstOf(of),
      job: withAsked(row ? usualJob(row, of, present, shop) : lookJob(id, of)),
    }))
    .sort((a, b) => badness(b.worst) - badness(a.worst) || (a.job.id < b.job.id ? -1 : 1))
    .map(({ job }) => job);
}

const worstOf = (of: readonly Finding[]): Finding['verdict'] =>
  of.reduce((worst, f) => (badness(f.verdict) > badness(worst) ? f.verdict : worst), of[0]!.verdict);

const distinct = (texts: readonly string[]): readonly string[] => [...new Set(texts)];

const shared = (of: readonly Finding[]) => ({
  findings: of.map((f) => f.id),
  places: distinct(of.flatMap((f) => (f.place === undefined ? [] : [f.place]))).toSorted(),
  why: distinct(of.map((f) => f.reason)).join(' '),
});

function usualJob(
  row: DefectWork,
  of: readonly Finding[],
  present: ReadonlySet<string>,
  shop: EntryOf<'shop'> | undefined,
): Job {
  const common = shared(of);
  const places = Math.max(1, common.places.length);
  const times = (n: number, counts: boolean): number => (counts ? n * places : n);
  const hours = both(row.hours, (h) => times(h, row.counted === 'by place'));
  const parts = both(row.partsDollars, (d) => cents(times(d, row.counted !== 'once') * 100));
  const cost = costOf(hours, parts, row.skill, shop);
  return {
    ...common,
    id: row.id,
    defect: row.id,
    part: row.part,
    what: row.work,
    skill: row.skill,
    hours,
    parts,
    ...(cost === undefined ? {} : { cost }),
    leadDays: row.leadDays,
    policy: policyOf(worstOf(of), row.policy),
    after: workOrders.filter((o) => o.next.includes(row.id) && present.has(o.first)).map((o) => o.first),
    ...(row.note === undefined ? {} : { note: row.note }),
    basis: `Usual hours and parts of a dealer’s own shop, US dollars of 2026: common practice, no source.${
      row.counted === 'once' || common.places.length > 0 ? '' : ' Which places is not said: counted once.'
    }${cost === undefined ? ' No cost: the shop’s labor rates are not known.' : ' Labor at the shop’s own rate.'}`,
  };
}

function lookJob(id: string, of: readonly Finding[]): Job {
  const first = of[0]!;
  return {
    ...shared(of),
    id,
    part: first.part,
    what: 'Look at it and quote',
    skill: 'default',
    policy: policyOf(worstOf(of), 'before sale'),
    after: [],
    note: distinct(of.map((f) => f.who)).join('; '),
    basis:
      'No published or usual hours are known for this. Somebody has to look before a time or a price can be named.',
  };
}

/** A stop is put right before sale whatever the habit; what is only to be watched may be left, and is then disclosed. */
function policyOf(verdict: Finding['verdict'], habit: Job['policy']): Job['policy'] {
  if (verdict === 'stop') return 'before sale';
  return verdict === 'watch' && habit === 'before sale' ? 'optional' : habit;
}

const both = <T extends number | Cents>(
  of: readonly [number, number],
  change: (n: number) => T,
): readonly [T, T] => [change(of[0]), change(of[1])];
