// Why: every fault is told to the buyer once: what it is, how big, what it costs, what was done about it.
import { placeName } from '../catalogue/place.ts';
import type { Finding } from '../judged/finding.ts';
import type { Job } from '../planned/job.ts';
import { dollars, showMoney } from '../units/money.ts';
import { basisOf, weakest } from './basis.ts';
import type { Claim, Unpublished } from './document.ts';
import { byWorst, isFault } from './fault.ts';
import { evidenceOf } from './line-claims.ts';
import { plainDay } from './plain-day.ts';
import { plainLimit } from './plain-limit.ts';
import { plainNear } from './plain-near.ts';
import { factWords, partName, subjectTitle } from './plain-subject.ts';

/** A text as a sentence: one full stop at its end, whatever the rule's author wrote. */
const stopped = (text: string): string => (/[.!?]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`);

/** The same fault at several places is told once, worst place first. */
function together(faults: readonly Finding[]): readonly (readonly [Finding, ...Finding[]])[] {
  const groups = new Map<string, [Finding, ...Finding[]]>();
  for (const f of faults) {
    const key = [f.rule, f.part, f.verdict, f.outcome, f.reason, f.place === undefined ? f.id : ''].join('|');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [f]);
    else group.push(f);
  }
  return [...groups.values()];
}

/** How big: the reading of each place and how near, then against whose limit. Empty where the reason has said it all. */
function howBig(group: readonly [Finding, ...Finding[]]): string {
  const read = group.flatMap((f) => {
    if (f.fact === undefined || f.fact.standing !== 'known' || f.fact.value.is === 'unknown') return [];
    const words = factWords(f.fact);
    // A sighted fault already says what was seen.
    if (
      f.limit === undefined &&
      (f.rule.startsWith('seen-') || f.reason.toLowerCase().includes(words.toLowerCase()))
    )
      return [];
    const near = plainNear(f);
    const where = group.length > 1 && f.place !== undefined ? `${placeName(f.place)} ` : '';
    return [`${where}${words}${near === '' ? '' : `, ${near}`}`];
  });
  if (read.length === 0) return '';
  const limits = [...new Set(group.flatMap((f) => (f.limit === undefined ? [] : [plainLimit(f.limit)])))];
  return limits.length === 0
    ? ` Noted: ${read.join('; ')}.`
    : ` Read: ${read.join('; ')}. It must be ${limits.join('; ')}.`;
}

/** The estimates of the jobs that would put it right, each job once, rounded outward to ten dollars. Nothing where one has no estimate. */
function whatItCosts(jobs: readonly Job[]): string {
  const costs = jobs.flatMap((j) => (j.cost === undefined ? [] : [j.cost]));
  if (costs.length === 0 || costs.length < jobs.length) return '';
  const [low, high] = costs.reduce<readonly [number, number]>(
    (sum, [l, h]) => [sum[0] + l, sum[1] + h],
    [0, 0],
  );
  const tens = (n: number): string => showMoney(dollars(n));
  const [from, to] = [Math.floor(low / 1000) * 10, Math.ceil(high / 1000) * 10];
  return ` Our shop's estimate to put it right: ${from === to ? tens(from) : `${tens(from)} to ${tens(to)}`}.`;
}

function whatWasDone(f: Finding, jobs: readonly Job[], on: Unpublished['on']): string {
  const day = plainDay(on);
  const open =
    f.outcome === 'fails' ? `Not repaired as of ${day}` : `Neither measured again nor repaired as of ${day}`;
  if (f.verdict === 'stop') {
    return ` ${open}. Offered only as not fit to drive or use until ${f.outcome === 'fails' ? 'this has been repaired' : 'this has been settled'}.`;
  }
  return jobs.some((j) => j.policy === 'before sale')
    ? ` ${open}; our shop advises to repair it before sale.`
    : ` ${open}.`;
}

function disclosure(group: readonly [Finding, ...Finding[]], u: Unpublished): Claim {
  const [first] = group;
  const ids = group.map((f) => f.id);
  const jobs = u.jobs.filter((j) => j.findings.some((id) => ids.includes(id)));
  const facts = group.flatMap((f) => (f.fact === undefined ? [] : [f.fact]));
  const places = group.flatMap((f) => (f.place === undefined ? [] : [placeName(f.place)]));
  const title = group.length === 1 ? subjectTitle(first) : `${partName(first.part)}, ${places.join(', ')}`;
  return {
    id: `disclosure/${first.id}`,
    text: `${first.reason.includes(subjectTitle(first)) && group.length === 1 ? '' : `${title}: `}${stopped(first.reason)}${howBig(group)}${whatItCosts(jobs)}${whatWasDone(first, jobs, u.on)}`,
    section: 'disclosure',
    standing: 'backed',
    basis: facts.length === 0 ? 'none' : weakest(facts.map(basisOf)),
    evidence: evidenceOf(facts),
    facts,
    figures: [...new Set(facts.flatMap((f) => (f.figure === undefined ? [] : [f.figure])))],
    findings: ids,
    published: true,
  };
}

/** Every fault in one disclosure, worst first; the same fault at several places in one sentence. */
export const disclosures = (u: Unpublished): readonly Claim[] =>
  together(u.findings.filter(isFault).toSorted(byWorst)).map((group) => disclosure(group, u));
