// Why: motion.csv: the accelerometer of a drive. Kept whole; read for its rate and the hardest slowing.
import { sayMotion } from '../words/say-account.ts';
import type { Draft } from './make-entries.ts';
import { missingColumns, readTable } from './read-table.ts';
import type { Reader, Reading } from './reading.ts';
import type { FileFault } from './walk-file.ts';

const number = /^-?\d+(\.\d+)?(e[+-]?\d+)?$/i;
/** Slowing is averaged over so many seconds: bumps in the road are not braking (house default). */
const window = 0.5;
/** A coach dips its nose when braked: two degrees of gravity show as slowing, m/s2 (house default). */
const dip = 0.34;
/** Rows told one by one; beyond them one line says how many more. */
const mostFaults = 20;

/** Columns: t in seconds; ax, ay, az in m/s2, x forward. The middle value of ax is taken for the tilt of the mounting. */
export function readMotion({ file, text, about }: Reader): Reading {
  const table = readTable(text, file.name);
  const missing = missingColumns(table, ['t', 'ax', 'ay', 'az']);
  if (missing.length > 0) {
    return {
      drafts: [],
      faults: [
        {
          file: file.name,
          line: 1,
          code: 'csv-columns',
          raw: text.slice(0, 400),
          detail: missing.join(', '),
        },
      ],
      account: [],
    };
  }
  const faults: FileFault[] = [...table.faults];
  const t: number[] = [];
  const ax: number[] = [];
  let bad = 0;
  for (const { cells, line, raw } of table.rows) {
    const all = [cells.t, cells.ax, cells.ay, cells.az];
    const isGood =
      all.every((c) => c !== undefined && number.test(c)) &&
      Number(cells.t) > (t.at(-1) ?? Number.NEGATIVE_INFINITY);
    if (isGood) {
      t.push(Number(cells.t));
      ax.push(Number(cells.ax));
    } else if (++bad <= mostFaults)
      faults.push({ file: file.name, line, code: 'motion-row', raw, detail: '' });
  }
  if (bad > mostFaults)
    faults.push({
      file: file.name,
      line: 0,
      code: 'motion-rows-more',
      raw: '',
      detail: String(bad - mostFaults),
    });
  const seconds = t.length > 1 ? t.at(-1)! - t[0]! : 0;
  const rate = seconds > 0 ? (t.length - 1) / seconds : 0;
  const peak = hardestSlowing(t, ax);
  const drafts: Draft[] =
    peak === undefined
      ? []
      : [
          {
            kind: 'observation',
            walk: about.walk,
            part: 'road_test_drive',
            aspect: 'peak_deceleration',
            sense: 'quantity',
            polarity: 'neutral',
            hedged: false,
            sure: 0.8,
            value: {
              is: 'quantity',
              value: Math.round(peak.value * 100) / 100,
              unit: 'm/s2',
              plusOrMinus: Math.round(peak.doubt * 100) / 100,
            },
            source: {
              from: 'instrument',
              media: file.media.id,
              note: `${t.length} rows at ${rate.toFixed(1)} Hz; mean over ${window} s; tilt of the mounting taken out, the dip of the nose not.`,
            },
          },
        ];
  return { drafts, faults, account: [sayMotion(file.name, t.length, rate, peak !== undefined, bad)] };
}

function hardestSlowing(
  t: readonly number[],
  ax: readonly number[],
): { value: number; doubt: number } | undefined {
  if (t.length < 3) return undefined;
  const tilt = ax.toSorted((a, b) => a - b)[Math.floor(ax.length / 2)]!;
  let best: { value: number; doubt: number } | undefined;
  let sum = 0;
  let squares = 0;
  for (let from = 0, to = 0; to < t.length; to++) {
    const a = ax[to]! - tilt;
    sum += a;
    squares += a * a;
    for (; t[to]! - t[from]! > window; from++) {
      const gone = ax[from]! - tilt;
      sum -= gone;
      squares -= gone * gone;
    }
    const n = to - from + 1;
    if (n < 2 || t[to]! - t[from]! < window / 2) continue;
    const mean = sum / n;
    const sigma = Math.sqrt(Math.max(0, squares / n - mean * mean) / n);
    if (-mean > (best?.value ?? 0)) best = { value: -mean, doubt: 1.96 * sigma + dip };
  }
  return best;
}
