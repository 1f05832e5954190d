// Why: how well talk is heard, walk by walk, and whether "sure" keeps its promise, measured anew whenever the pages are made.
import { measureWalk, sealedWalks, type WalkScore, walkNames } from '../../test/walks/walk-score.ts';
import {
  leftOut,
  reliabilityOf,
  type SureRow,
  straightenedLeftOut,
  sureRows,
} from '../../test/walks/walk-sure.ts';
import { head, page, row } from './page.ts';

const pct = (n: number): string => `${(100 * n).toFixed(1)} %`;

const scoreRow = (name: string, s: WalkScore): string =>
  row(
    name,
    String(s.gold),
    pct(s.recall),
    pct(s.recall_must),
    pct(s.precision),
    pct(s.position_accuracy),
    pct(s.hedged_accuracy),
    `${s.corrections.final_found} of ${s.corrections.final_gold}`,
    String(s.corrections.wrong_value_extracted),
    String(s.false_distractor),
    String(s.negation_errors),
  );

/** Recall of each kind over walks. */
function kindRows(scores: readonly WalkScore[]): string[] {
  const sum = new Map<string, { gold: number; hit: number }>();
  for (const s of scores)
    for (const [kind, k] of Object.entries(s.by_kind)) {
      const t = sum.get(kind) ?? { gold: 0, hit: 0 };
      sum.set(kind, { gold: t.gold + k.gold, hit: t.hit + k.hit });
    }
  return [...sum].map(([kind, k]) => row(kind, String(k.gold), pct(k.hit / k.gold)));
}

const mean = (scores: readonly WalkScore[], of: (s: WalkScore) => number): number =>
  scores.reduce((t, s) => t + of(s), 0) / Math.max(1, scores.length);

function summary(scores: readonly WalkScore[]): string {
  const gold = scores.reduce((t, s) => t + s.gold, 0);
  const hit = scores.reduce((t, s) => t + s.matched, 0);
  return `Together: ${gold} facts, recall ${pct(hit / Math.max(1, gold))}; mean of the walks: of what matters ${pct(mean(scores, (s) => s.recall_must))}, precision ${pct(mean(scores, (s) => s.precision))}, places ${pct(mean(scores, (s) => s.position_accuracy))}.`;
}

const columns = head(
  'walk',
  'facts',
  'recall',
  'of what matters',
  'precision',
  'places',
  'hedges',
  'corrections',
  'wrong values',
  'distractors',
  'denials lost',
);

function curveTable(rows: readonly SureRow[]): string[] {
  const { bands, brier, gap } = reliabilityOf(rows);
  return [
    ...head('promised', 'observations', 'mean promise', 'right'),
    ...bands
      .filter((b) => b.count > 0)
      .map((b) =>
        row(`${b.from.toFixed(1)} to ${b.to.toFixed(1)}`, String(b.count), pct(b.promised), pct(b.held)),
      ),
    '',
    `Brier score ${brier.toFixed(3)}; mean gap between promise and truth ${pct(gap)}.`,
  ];
}

/** The curve as a picture: promised along the bottom, right along the side; the straight line is perfect. */
function curvePicture(open: readonly SureRow[], sealed: readonly SureRow[]): string {
  const at = (x: number, y: number): string => `${(40 + 300 * x).toFixed(1)},${(320 - 300 * y).toFixed(1)}`;
  const line = (rows: readonly SureRow[], color: string, dash: string): string => {
    const bands = reliabilityOf(rows).bands.filter((b) => b.count >= 8);
    const dots = bands.map((b) => {
      const [x, y] = at(b.promised, b.held).split(',');
      return `<circle cx="${x}" cy="${y}" r="${(2 + Math.sqrt(b.count) / 5).toFixed(1)}" fill="${color}"/>`;
    });
    return `<polyline points="${bands.map((b) => at(b.promised, b.held)).join(' ')}" fill="none" stroke="${color}" stroke-width="2"${dash}/>${dots.join('')}`;
  };
  const ticks = [0, 0.25, 0.5, 0.75, 1].map((v) => {
    const [x] = at(v, 0).split(',');
    const [, y] = at(0, v).split(',');
    return `<text x="${x}" y="338" text-anchor="middle">${100 * v} %</text><text x="34" y="${y}" text-anchor="end" dominant-baseline="middle">${100 * v}</text>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 372 380" role="img" aria-labelledby="t" font-family="sans-serif" font-size="11"><!-- made by npm run docs --><title id="t">Promised against right: observations of the walks left out of the fit, and of the walks that are only scored</title><rect width="372" height="380" fill="#fff"/><path d="M${at(0, 0)}L${at(1, 1)}" stroke="#999" stroke-dasharray="4 4"/><path d="M${at(0, 1)}V320H340" fill="none" stroke="#333"/>${ticks.join('')}${line(open, '#0b5fa5', '')}${line(sealed, '#a3480b', ' stroke-dasharray="6 3"')}<text x="40" y="358" fill="#0b5fa5">solid: walks worked with, each left out of its own fit</text><text x="40" y="373" fill="#a3480b">dashed: walks only scored, each set straight by the others</text></svg>\n`;
}

/** docs/generated/hearing.md and its picture. */
export function hearingPages(): Record<string, string> {
  const names = walkNames();
  const scores = new Map(names.map((w) => [w, measureWalk(w).S]));
  const of = (sealed: boolean): readonly (readonly [string, WalkScore])[] =>
    [...scores].filter(([w]) => sealedWalks.has(w) === sealed);
  const openRows = leftOut(names.filter((w) => !sealedWalks.has(w)).map((w) => sureRows(w)));
  const sealedRows = straightenedLeftOut(names.filter((w) => sealedWalks.has(w)).map((w) => sureRows(w)));
  const table = (sealed: boolean): string[] => [
    ...columns,
    ...of(sealed).map(([w, s]) => scoreRow(w, s)),
    '',
    summary(of(sealed).map(([, s]) => s)),
    '',
    ...head('kind', 'facts', 'recall'),
    ...kindRows(of(sealed).map(([, s]) => s)),
    '',
  ];
  return {
    'hearing.md': page(
      'Hearing, measured',
      'The walks of test/data/walks, their conventions and their measure are described in test/data/walks/README.md. A distractor taken for a fact counts twice against precision.',
      [
        '## Walks that are only scored',
        '',
        'Nobody who works on the hearing reads them: this is how the talk of strangers fares.',
        '',
        ...table(true),
        '## Walks that were worked with',
        '',
        ...table(false),
        '## Does "sure" keep its promise?',
        '',
        '![Promised against right](hearing-reliability.svg)',
        '',
        'Each observation carries a probability (src/said/hear/sure.ts), fitted on the walks worked with and set straight by two numbers on the walks that are only scored. Walks worked with, each by weights fitted on the others:',
        '',
        ...curveTable(openRows),
        '',
        'Walks that are only scored, each set straight by the others:',
        '',
        ...curveTable(sealedRows),
      ],
    ),
    'hearing-reliability.svg': curvePicture(openRows, sealedRows),
  };
}
