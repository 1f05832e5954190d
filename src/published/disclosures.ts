// Why: every fault is told to the buyer once: what it is, how big, what it costs, what was done about it.
import type { Finding } from '../judged/finding.ts';
import type { Job } from '../planned/job.ts';
import { showMoney } from '../units/money.ts';
import { basisOf } from './basis.ts';
import type { Claim, Unpublished } from './document.ts';
import { byWorst, isFault } from './fault.ts';
import { plainDay } from './plain-day.ts';
import { plainLimit } from './plain-limit.ts';
import { plainNear } from './plain-near.ts';
import { factWords, subjectTitle } from './plain-subject.ts';

/** A text as a sentence: one full stop at its end, whatever the rule's author wrote. */
export const stopped = (text: string): string =>
  /[.!?]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`;

/** How big: the reading, how near, and against whose limit. Empty where the fault is a sight, not a number. */
function howBig(f: Finding): string {
  if (f.fact === undefined || f.fact.standing !== 'known') return '';
  const read = factWords(f.fact);
  if (f.limit === undefined) return ` Noted: ${read}.`;
  const near = plainNear(f);
  return ` Read: ${read}${near === '' ? '' : `, ${near}`}; it must be ${plainLimit(f.limit)}.`;
}

function whatItCosts(job: Job | undefined): string {
  if (job?.cost === undefined) return '';
  const [low, high] = job.cost;
  return ` Our shop's estimate to put it right: ${low === high ? showMoney(low) : `${showMoney(low)} to ${showMoney(high)}`}.`;
}

function whatWasDone(f: Finding, job: Job | undefined, on: Unpublished['on']): string {
  const day = plainDay(on);
  const open =
    f.outcome === 'fails' ? `Not repaired as of ${day}` : `Neither measured again nor repaired as of ${day}`;
  if (f.verdict === 'stop') {
    return ` ${open}. Offered only as not fit to drive or use until ${f.outcome === 'fails' ? 'this has been repaired' : 'this has been settled'}.`;
  }
  return job?.policy === 'before sale' ? ` ${open}; to be repaired before sale.` : ` ${open}.`;
}

/** One disclosure for every fault, worst first. */
export function disclosures(u: Unpublished): readonly Claim[] {
  const jobOf = new Map(u.jobs.flatMap((j) => j.findings.map((id) => [id, j] as const)));
  return u.findings
    .filter(isFault)
    .toSorted(byWorst)
    .map((f) => {
      const job = jobOf.get(f.id);
      return {
        id: `disclosure/${f.id}`,
        text: `${subjectTitle(f)}: ${stopped(f.reason)}${howBig(f)}${whatItCosts(job)}${whatWasDone(f, job, u.on)}`,
        section: 'disclosure',
        standing: 'backed',
        basis: f.fact === undefined ? 'none' : basisOf(f.fact),
        evidence: f.fact?.evidence ?? [],
        facts: f.fact === undefined ? [] : [f.fact],
        figures: f.fact?.figure === undefined ? [] : [f.fact.figure],
        findings: [f.id],
        published: true,
      } satisfies Claim;
    });
}
