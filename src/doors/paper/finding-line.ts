// Why: a finding as the words a reader needs: what, why, how near, whose limit, where it was heard, what to do. For page and print alike.
import { cautionOf } from '../../judged/caution.ts';
import type { Finding } from '../../judged/finding.ts';
import type { Verdict } from '../../judged/rule.ts';
import { limitStrip } from '../../published/limit-strip.ts';
import { quoted, sayDoubt, sayEvidence } from '../words/say-evidence.ts';
import { sayCitation, sayLimit } from '../words/say-limit.ts';
import { sayNear } from '../words/say-near.ts';
import { sayFact, subjectTitle } from '../words/say-value.ts';
import { stripSvg } from './strip-svg.ts';

/** All texts are plain; empty where there is nothing to say. */
export interface FindingLine {
  /** Its number on the drawing; nought where it is not pinned. */
  readonly number: number;
  readonly id: string;
  readonly verdict: Verdict;
  readonly subject: string;
  readonly asks: string;
  readonly reason: string;
  readonly reading: string;
  readonly near: string;
  readonly limit: string;
  readonly quote: string;
  readonly evidence: string;
  readonly next: string;
  readonly who: string;
  readonly caution: string;
  readonly cites: readonly string[];
  /** SVG of the limit strip. */
  readonly strip: string;
}

/** The rule's reason names the value already. */
const said = (f: Finding): boolean =>
  f.limit === undefined &&
  f.fact !== undefined &&
  f.reason.toLowerCase().includes(sayFact(f.fact).toLowerCase());

/** The words of a finding. `numbers` are the pins of the drawing by finding id. */
export function findingLine(f: Finding, numbers: ReadonlyMap<string, number>): FindingLine {
  const strip = limitStrip(f);
  const evidence = f.fact?.evidence.slice(0, 4) ?? [];
  const doubts = f.fact?.doubts.map(sayDoubt) ?? [];
  const bad = f.verdict !== 'sound';
  return {
    number: numbers.get(f.id) ?? 0,
    id: f.id,
    verdict: f.verdict,
    subject: subjectTitle(f),
    asks: f.asks,
    reason: f.reason,
    reading: f.fact === undefined || said(f) ? '' : sayFact(f.fact),
    near: sayNear(f),
    limit: f.limit === undefined ? '' : `must be ${sayLimit(f.limit)}`,
    quote: evidence.map(quoted).find((q) => q !== undefined) ?? '',
    evidence: [...evidence.map(sayEvidence), ...doubts].join('; '),
    next: bad ? (f.outcome === 'fails' ? f.next : f.look) : '',
    who: bad && f.outcome === 'fails' ? f.who : '',
    caution: bad ? (cautionOf(f.caution) ?? '') : '',
    cites: [...new Set([...(f.limit?.cites ?? []), ...f.cites].map(sayCitation))],
    strip: strip === undefined ? '' : stripSvg(strip),
  };
}
