// Why: one look shows where the limit stands, where the reading stands and how wide its doubt is; no number needed.
import type { Finding } from '../judged/finding.ts';
import type { Must, Verdict } from '../judged/rule.ts';
import type { Standing } from '../standards/standard.ts';
import { readingOf } from './plain-near.ts';
import { plainNumber, plainQuantity } from './plain-value.ts';

/** Positions run from 0 (left end) to 1 (right end); larger values lie to the right. */
export interface LimitStrip {
  readonly verdict: Verdict;
  readonly limit: number;
  readonly reading: number;
  /** From where to where the reading may lie; both equal to `reading` where no doubt is known. */
  readonly doubt: readonly [from: number, to: number];
  /** The side of the limit that is not acceptable. */
  readonly bad: readonly [from: number, to: number];
  /** "limit 2", "practice 15": the number with a word for who set it. */
  readonly limitLabel: string;
  /** "2 ± 0.5 /32 in". */
  readonly readingLabel: string;
}

const who: Readonly<Record<Standing, string>> = {
  law: 'law',
  standard: 'standard',
  maker: 'maker',
  'trade practice': 'practice',
  'house default': 'house',
};
const badBelow: ReadonlySet<Must> = new Set<Must>(['at least', 'more than']);
const clamp = (n: number): number => Math.min(1, Math.max(0, n));

/** Ends of the strip: the limit in the middle, both the reading and its doubt well inside; never below nought for what cannot be negative. */
function ends(limit: number, low: number, high: number): readonly [number, number] {
  const far = Math.max(Math.abs(low - limit), Math.abs(high - limit));
  const half = far === 0 ? Math.max(Math.abs(limit) / 2, 1) : far * 2.2;
  const from = limit >= 0 && low >= 0 ? Math.max(0, limit - half) : limit - half;
  return [from, limit + (far === 0 ? half : Math.max(half * 0.6, far * 1.35))];
}

/** The strip of a finding; undefined where no number was compared with a limit. */
export function limitStrip(f: Finding): LimitStrip | undefined {
  const r = readingOf(f);
  if (r === undefined || f.limit === undefined || f.fact?.value.is !== 'quantity') return undefined;
  const low = r.value - r.plusOrMinus;
  const high = (r.upTo ?? r.value) + r.plusOrMinus;
  const [from, to] = ends(f.limit.value, low, high);
  const at = (n: number): number => clamp((n - from) / (to - from));
  const limit = at(f.limit.value);
  const { value, unit, plusOrMinus, upTo } = f.fact.value;
  return {
    verdict: f.verdict,
    limit,
    reading: at(r.upTo === undefined ? r.value : (r.value + r.upTo) / 2),
    doubt: [at(low), at(high)],
    bad: badBelow.has(f.limit.must) ? [0, limit] : [limit, 1],
    limitLabel: `${who[f.limit.standing]} ${plainNumber(f.limit.value)}`,
    readingLabel: plainQuantity(value, unit, plusOrMinus, upTo),
  };
}
