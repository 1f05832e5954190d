// Why: whether "sure" means what it says is measured on the annotated walks; the fit and the page in docs share how.
import { readFileSync } from 'node:fs';
import { fitLogistic } from '../../scripts/logistic.ts';
import { hearWithFeatures } from '../../src/said/hear/hear.ts';
import { scoreOf, straight, sureOf } from '../../src/said/hear/sure.ts';
import { readTranscript } from '../../src/said/transcript/read-transcript.ts';
import { measureRows, walkFolder } from './walk-score.ts';

/** An observation of a walk: its features, and whether the gold file bears it out (once more of a fact counts as right). */
export interface SureRow {
  readonly x: readonly number[];
  readonly right: boolean;
  /** Its probability, where another than the one in use is asked about. */
  readonly p?: number;
}

/** Every observation of a walk but praise, which is no finding. */
export function sureRows(walk: string, dir: URL = walkFolder): SureRow[] {
  const text = readFileSync(new URL(`${walk}.vtt`, dir), 'utf8');
  const heard = hearWithFeatures(readTranscript(`${walk}.vtt`, text).cues, { least: 0 });
  const { wrong } = measureRows(
    { ...heard, observations: heard.observations.map((o) => o.observation) },
    walk,
    dir,
  );
  return heard.observations.flatMap((o, i) =>
    o.observation.sense === 'claim' || o.observation.retracted
      ? []
      : [{ x: o.features, right: !wrong.has(i) }],
  );
}

/** Rows of walks that were worked with, each walk by weights fitted on the others. */
export const leftOut = (walks: readonly (readonly SureRow[])[]): SureRow[] =>
  walks.flatMap((rows, i) => {
    const weights = fitLogistic(walks.flatMap((o, k) => (k === i ? [] : o)));
    return rows.map((r) => ({ ...r, p: straight(scoreOf(r.x, weights), [0, 1]) }));
  });

/** Offset and slope that set scores straight on these rows. */
export const straightened = (rows: readonly SureRow[], weights?: readonly number[]): number[] =>
  fitLogistic(
    rows.map((r) => ({ x: [1, scoreOf(r.x, weights)], right: r.right })),
    0.01,
  );

/** Rows of walks that are only scored, each walk set straight by the others. */
export const straightenedLeftOut = (walks: readonly (readonly SureRow[])[]): SureRow[] =>
  walks.flatMap((rows, i) => {
    const map = straightened(walks.flatMap((o, k) => (k === i ? [] : o)));
    return rows.map((r) => ({ ...r, p: straight(scoreOf(r.x), map) }));
  });

/** One band of the reliability curve: what was promised and what held. */
export interface Band {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly promised: number;
  readonly held: number;
}

/** The curve in ten bands, with the Brier score and the mean gap between promise and truth, weighted by count. */
export function reliabilityOf(rows: readonly SureRow[]): {
  readonly bands: readonly Band[];
  readonly brier: number;
  readonly gap: number;
} {
  const points = rows.map((r) => ({ p: r.p ?? sureOf(r.x), right: r.right }));
  const bands = Array.from({ length: 10 }, (_, k): Band => {
    const own = points.filter((q) => Math.min(9, Math.floor(q.p * 10)) === k);
    const n = Math.max(1, own.length);
    return {
      from: k / 10,
      to: (k + 1) / 10,
      count: own.length,
      promised: own.reduce((s, q) => s + q.p, 0) / n,
      held: own.filter((q) => q.right).length / n,
    };
  });
  const all = Math.max(1, points.length);
  return {
    bands,
    brier: points.reduce((s, q) => s + (q.p - Number(q.right)) ** 2, 0) / all,
    gap: bands.reduce((s, b) => s + b.count * Math.abs(b.promised - b.held), 0) / all,
  };
}
