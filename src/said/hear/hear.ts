// Why: the one door from timed words to observations: what was said, of what, where, and how sure that is.
import type { VehicleKind } from '../../catalogue/vehicle-kind.ts';
import type { Cue } from '../entry.ts';
import type { Clause, Draft } from './clause.ts';
import type { Heard, HeardObservation } from './heard.ts';
import { namedBy } from './named.ts';
import { stationPath } from './station-path.ts';
import { leastSure, sureOf } from './sure.ts';
import { featuresOf } from './sure-features.ts';
import { understand } from './understand.ts';
import { quoteOf } from './word.ts';

interface Featured {
  readonly observation: HeardObservation;
  readonly features: readonly number[];
}

/** Praise is kept apart and is no finding; that it was praise is seldom in doubt. */
const claimSure = 0.8;
const round = (p: number): number => Math.round(Math.min(0.99, Math.max(0.02, p)) * 100) / 100;

/**
 * Hears a recording. Pure and total: any cues give a result; every cue is in `used` or in `unused`. With the kind of
 * vehicle given, parts that it cannot have are not heard. What is less sure than `least` is left out, and its cue is
 * unused unless something else was heard in it.
 */
export function hear(
  cues: readonly Cue[],
  context: { readonly vehicle?: VehicleKind; readonly least?: number } = {},
): Heard {
  const { observations, ...rest } = hearWithFeatures(cues, context);
  return { observations: observations.map((o) => o.observation), ...rest };
}

/** The same, each observation with the features its probability was worked out from, for those who fit them. */
export function hearWithFeatures(
  cues: readonly Cue[],
  context: { readonly vehicle?: VehicleKind; readonly least?: number } = {},
): Omit<Heard, 'observations'> & { readonly observations: readonly Featured[] } {
  const { all, marks, clauses, path, drafts, corrected } = understand(cues, context);
  const { replaces, retracted } = corrected;
  const features = featuresOf(marks, clauses, path, drafts);
  const sure = drafts.map((d, i) => (d.sense === 'claim' ? claimSure : round(sureOf(features[i] ?? []))));
  const kept = drafts.flatMap((_, i) => ((sure[i] ?? 0) >= (context.least ?? leastSure) ? [i] : []));
  const keptAt = new Map(kept.map((i, k) => [i, k]));
  const seen = new Uint8Array(cues.length);
  const observations = kept.map((i): Featured => {
    const d = drafts[i] as Draft;
    // the quote holds the word it turns on, also where that stands in the clause after
    const from = Math.min(d.from, d.at);
    const to = Math.max(d.to, d.at + 1);
    const first = all.words[from];
    const end = all.words[to - 1];
    const turn = all.words[d.at];
    const named = namedBy(marks, d);
    for (let k = from; k < to; k++) seen[all.words[k]?.cue ?? 0] = 1;
    const corrects = (replaces.get(i) ?? []).flatMap((k) => keptAt.get(k) ?? []);
    return {
      features: features[i] ?? [],
      observation: {
        part: d.part,
        ...(d.place === undefined ? {} : { place: d.place }),
        ...(d.where === undefined ? {} : { where: d.where }),
        aspect: d.aspect,
        value: d.value,
        sense: d.sense,
        polarity: d.polarity,
        hedged: d.hedged,
        ...(d.saidBy === undefined ? {} : { saidBy: d.saidBy }),
        sure: sure[i] ?? 0,
        start: turn?.start ?? first?.start ?? 0,
        end: Math.max(end?.end ?? 0, turn?.end ?? 0),
        words: quoteOf(all, from, to - 1),
        ...(named ? { named: bare(quoteOf(all, named.from, named.to - 1)) } : {}),
        ...(turn ? { key: all.written[turn.written] ?? turn.norm } : {}),
        ...(corrects.length > 0 ? { corrects } : {}),
        ...(retracted.has(i) ? { retracted: true } : {}),
      },
    };
  });
  const indexes = cues.map((_, i) => i);
  return {
    observations,
    chapters: chaptersOf(cues, clauses, stationPath(marks, clauses, drafts), all.words),
    used: indexes.filter((i) => seen[i] === 1),
    unused: indexes.filter((i) => seen[i] !== 1),
  };
}

/** Quoted words without the stops around them. */
const bare = (quote: string): string => quote.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');

function chaptersOf(
  cues: readonly Cue[],
  clauses: readonly Clause[],
  path: readonly string[],
  words: readonly { readonly start: number }[],
): Heard['chapters'] {
  const chapters: { station: string; start: number; end: number }[] = [];
  clauses.forEach((c, i) => {
    const station = path[i] ?? '';
    const start = words[c.from]?.start ?? 0;
    const open = chapters.at(-1);
    if (open?.station === station) return;
    if (open) open.end = Math.max(open.start, start);
    chapters.push({ station, start, end: start });
  });
  const lastEnd = cues.reduce((end, c) => Math.max(end, c.end), 0);
  const open = chapters.at(-1);
  if (open) open.end = Math.max(open.start, lastEnd);
  return chapters;
}
