// Why: what counts as a fault, and which fault comes first, is the same in the report, the listing, the chapters and the drawing.
import type { Finding } from '../judged/finding.ts';
import type { Verdict, Weight } from '../judged/rule.ts';

/** Worst first. */
export const verdictOrder: readonly Verdict[] = ['stop', 'repair', 'watch', 'not seen', 'sound'];
const weightOrder: readonly Weight[] = ['danger', 'unlawful', 'defect', 'wear'];

/**
 * A finding that a buyer is told of as a fault: it failed, or it is so near its limit that the benefit of the doubt goes to the person. Every
 * finding is a fault, sound, or not seen.
 */
export const isFault = (f: Finding): boolean =>
  f.verdict === 'stop' || f.verdict === 'repair' || f.verdict === 'watch';

/** Worst verdict first, then by what could happen to a person, then by part and place, so that the order never depends on chance. */
export function byWorst(a: Finding, b: Finding): number {
  return (
    verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) ||
    weightOrder.indexOf(a.weight) - weightOrder.indexOf(b.weight) ||
    (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
  );
}
