// Why: a fault as the words a reader needs: what, how near, whose limit, where it was heard, what to do; the same fault at several places once.
import { placeName } from '../../catalogue/place.ts';
import { cautionOf } from '../../judged/caution.ts';
import type { Finding } from '../../judged/finding.ts';
import type { Verdict } from '../../judged/rule.ts';
import {
  briefly,
  groupTitle,
  groupWords,
  isSight,
  readingsOf,
  reasonOf,
  type Together,
} from '../../published/fault-groups.ts';
import { limitStrip } from '../../published/limit-strip.ts';
import { lowered } from '../../published/plain-subject.ts';
import { quoted, sayDoubt, sayEvidence } from '../words/say-evidence.ts';
import { sayLimit } from '../words/say-limit.ts';
import { sayNear } from '../words/say-near.ts';
import { numberRuns } from './number-runs.ts';
import type { ReportPhoto } from './report-photos.ts';
import { stripSvg } from './strip-svg.ts';

/** One finding of a fault that is told for several. */
export interface FaultRow {
  readonly id: string;
  /** Its number on the drawing. */
  readonly number: number;
  readonly place: string;
  readonly reading: string;
  readonly near: string;
  readonly quote: string;
  readonly evidence: string;
}

/** All texts are plain; empty where there is nothing to say. */
export interface FaultLine {
  /** Numbers on the drawing: "17 to 21". Empty where it is not pinned. */
  readonly numbers: string;
  readonly verdict: Verdict;
  readonly subject: string;
  readonly reason: string;
  /** What is wrong in a few words, for the first page. */
  readonly short: string;
  readonly rows: readonly FaultRow[];
  readonly limit: string;
  readonly cost: string;
  /** Who asked on the walk for the work. */
  readonly asked: string;
  readonly next: string;
  readonly who: string;
  readonly caution: string;
  /** SVG of the limit strip of the worst of them. */
  readonly strip: string;
  readonly stripSays: string;
  readonly photos: readonly ReportPhoto[];
}

/** House default, no source: words longer than this are cut to their first clause on the first page; the fault's own lines have them all. */
const longestShort = 90;
function cut(text: string): string {
  const brief = briefly(text);
  return brief.length <= longestShort ? brief : (brief.split(/; |: |\. /)[0] ?? brief);
}

function rowOf(f: Finding, numbers: ReadonlyMap<string, number>): FaultRow {
  const evidence = f.fact?.evidence.slice(0, 3) ?? [];
  const doubts = (f.fact?.doubts ?? []).map((d) => (d === 'not reviewed' ? 'unconfirmed' : sayDoubt(d)));
  const reading = isSight(f) ? '' : readingsOf([f]);
  return {
    id: f.id,
    number: numbers.get(f.id) ?? 0,
    place: f.place === undefined ? '' : placeName(f.place),
    reading,
    near: sayNear(f),
    quote: evidence.map(quoted).find((q) => q !== undefined) ?? '',
    evidence: [[...new Set(evidence.map(sayEvidence))].join(', '), ...doubts]
      .filter((w) => w !== '')
      .join('; '),
  };
}

/** The words of a fault. `numbers` are the pins of the drawing by finding id. */
export function faultLine(
  group: Together,
  numbers: ReadonlyMap<string, number>,
  { cost, asked }: Pick<FaultLine, 'cost' | 'asked'>,
  photos: readonly ReportPhoto[],
): FaultLine {
  const [first] = group;
  const strip = limitStrip(first);
  const sight = isSight(first);
  const words = groupWords(group);
  return {
    numbers: numberRuns(group.flatMap((f) => numbers.get(f.id) ?? [])),
    verdict: first.verdict,
    subject: groupTitle(group),
    reason: sight ? `${words.charAt(0).toUpperCase()}${words.slice(1)}.` : reasonOf(first),
    short: cut(
      sight ? words : first.limit === undefined ? lowered(reasonOf(first)).replace(/\.$/, '') : words,
    ),
    rows: group.map((f) => rowOf(f, numbers)),
    limit: first.limit === undefined ? '' : `must be ${sayLimit(first.limit)}`,
    cost,
    asked,
    // What to do about a thing that was only seen stands once over the list.
    next: sight ? '' : first.outcome === 'fails' ? first.next : first.look,
    who: sight
      ? first.who.startsWith('someone trained')
        ? 'someone trained and, where the law asks for it, licensed'
        : ''
      : first.outcome === 'fails'
        ? first.who
        : '',
    caution: cautionOf(first.caution) ?? '',
    strip: strip === undefined ? '' : stripSvg(strip),
    stripSays: strip === undefined ? '' : `${strip.readingLabel}, ${sayNear(first)}, ${strip.limitLabel}`,
    photos,
  };
}
