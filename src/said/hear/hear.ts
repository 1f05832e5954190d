// Why: the one door from timed words to observations: what was said, of what, where, and how sure that is.
import { partOf } from '../../catalogue/index.ts';
import type { VehicleKind } from '../../catalogue/vehicle-kind.ts';
import type { Cue } from '../entry.ts';
import { type Clause, clausesOf, type Draft } from './clause.ts';
import { correctDrafts } from './correct.ts';
import { hearAirBrakes } from './hear-air-brakes.ts';
import { hearGood } from './hear-good.ts';
import { hearIdentity } from './hear-identity.ts';
import { hearNumbers } from './hear-numbers.ts';
import { hearAbsence, hearPraise, hearPresence } from './hear-praise.ts';
import { hearRoad } from './hear-road.ts';
import { hearStates } from './hear-states.ts';
import { hearAdvice, hearCause, hearUnknown } from './hear-unknown.ts';
import { hearWorks } from './hear-works.ts';
import type { Heard, HeardObservation } from './heard.ts';
import { joinTypes } from './join-types.ts';
import type { MarkedAt } from './marked-at.ts';
import { markWords } from './marks.ts';
import type { Mention } from './mention.ts';
import { namedBy } from './named.ts';
import { restoreStops } from './restore-stops.ts';
import { scopesOf } from './scope.ts';
import { putRight } from './sound-alike.ts';
import { stationPath } from './station-path.ts';
import { Talk } from './talk.ts';
import { setLoadsApart } from './without-load.ts';
import { quoteOf, wordsOf } from './word.ts';
import { knowWritten } from './written-name.ts';

/**
 * Hears a recording. Pure and total: any cues give a result; every cue is in `used` or in `unused`. With the kind of
 * vehicle given, parts that it cannot have are not heard.
 */
export function hear(cues: readonly Cue[], context: { readonly vehicle?: VehicleKind } = {}): Heard {
  const spoken = wordsOf(cues);
  const all = { ...spoken, words: restoreStops(putRight(spoken.words)) };
  const marks = markWords(all.words);
  const clauses = clausesOf(marks);
  const path = stationPath(marks, clauses);
  const talk = new Talk(marks, scopesOf(marks), path);
  knowWritten(talk, all.written);
  const heard: Draft[] = [];
  const taken = new Uint8Array(all.words.length + 1);
  let last: Draft | undefined;
  for (const clause of clauses) {
    talk.enter(clause);
    for (const d of hearClause(talk, clause, taken, last)) {
      if (context.vehicle && partOf(d.part)?.kinds.includes(context.vehicle) === false) continue;
      heard.push(d);
      if (d.sense !== 'claim') last = d;
      if (d.part === 'coach' && d.aspect === 'year')
        talk.recent.unshift({ parts: ['coach'], at: d.at, weak: false });
      if (d.sense === 'defect') talk.fault = { part: d.part, at: d.at };
    }
  }
  dropPresence(heard);
  heard.sort((a, b) => a.at - b.at);
  const drafts = setLoadsApart(heard, all.words);
  joinTypes(drafts, all.words);
  dropEchoes(drafts, marks.mentionAt);
  const { replaces, retracted } = correctDrafts(marks, drafts);
  const seen = new Uint8Array(cues.length);
  const observations = drafts.map((d, i): HeardObservation => {
    // the quote holds the word it turns on, also where that stands in the clause after
    const from = Math.min(d.from, d.at);
    const to = Math.max(d.to, d.at + 1);
    const first = all.words[from];
    const end = all.words[to - 1];
    const turn = all.words[d.at];
    const named = namedBy(marks, d);
    for (let k = from; k < to; k++) seen[all.words[k]?.cue ?? 0] = 1;
    const corrects = replaces.get(i);
    return {
      part: d.part,
      ...(d.place === undefined ? {} : { place: d.place }),
      aspect: d.aspect,
      value: d.value,
      sense: d.sense,
      polarity: d.polarity,
      hedged: d.hedged,
      ...(d.saidBy === undefined ? {} : { saidBy: d.saidBy }),
      sure: Math.round(Math.min(0.97, Math.max(0.05, d.weight - (d.hedged ? 0.1 : 0))) * 100) / 100,
      start: turn?.start ?? first?.start ?? 0,
      end: Math.max(end?.end ?? 0, turn?.end ?? 0),
      words: quoteOf(all, from, to - 1),
      ...(named ? { named: bare(quoteOf(all, named.from, named.to - 1)) } : {}),
      ...(turn ? { key: all.written[turn.written] ?? turn.norm } : {}),
      ...(corrects ? { corrects: [...corrects] } : {}),
      ...(retracted.has(i) ? { retracted: true } : {}),
    };
  });
  const indexes = cues.map((_, i) => i);
  return {
    observations,
    chapters: chaptersOf(cues, clauses, path, all.words),
    used: indexes.filter((i) => seen[i] === 1),
    unused: indexes.filter((i) => seen[i] !== 1),
  };
}

/** Quoted words without the stops around them. */
const bare = (quote: string): string => quote.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');

/** The same good news of the same part within a breath is said once. */
function dropEchoes(drafts: Draft[], mentionAt: MarkedAt<Mention>): void {
  for (let i = drafts.length - 1; i > 0; i--) {
    const d = drafts[i] as Draft;
    if (d.sense !== 'operates' && !(d.sense === 'condition' && d.polarity === 'good')) continue;
    const before = drafts
      .slice(Math.max(0, i - 6), i)
      .some(
        (o) =>
          o.part === d.part &&
          o.place === d.place &&
          o.aspect === d.aspect &&
          o.polarity === d.polarity &&
          d.at - o.at <= 25,
      );
    const named = before && [0, 1, 2, 3, 4, 5, 6].some((k) => mentionAt.to(d.at - k)?.parts[0] === d.part);
    if (before && !named) drafts.splice(i, 1);
  }
}

/** "It's there" is worth saying only of a part of which nothing else is said nearby. */
function dropPresence(drafts: Draft[]): void {
  for (let i = drafts.length - 1; i >= 0; i--) {
    const d = drafts[i] as Draft;
    if (d.aspect !== 'present' || d.sense !== 'condition') continue;
    const near = drafts
      .slice(Math.max(0, i - 8), i + 9)
      .some(
        (o) =>
          o !== d &&
          o.part === d.part &&
          Math.abs(o.at - d.at) <= 14 &&
          (o.sense === 'quantity' || o.sense === 'identity'),
      );
    if (near) drafts.splice(i, 1);
  }
}

/** Everything heard in one clause. */
function hearClause(talk: Talk, clause: Clause, taken: Uint8Array, last: Draft | undefined): Draft[] {
  const tested = [...hearAirBrakes(talk, clause, taken), ...hearRoad(talk, clause, taken)];
  const praise = hearPraise(talk, clause);
  const cause = hearCause(talk, clause, last, taken);
  const unknown = cause.length > 0 ? [] : hearUnknown(talk, clause, taken);
  const absent = hearAbsence(talk, clause, taken);
  const identity = hearIdentity(talk, clause, taken);
  const numbers = hearNumbers(talk, clause, taken);
  const idle = praise.length > 0 && clause.numbers.length === 0 && clause.mentions.length === 0;
  const states = idle
    ? []
    : [
        ...hearStates(talk, clause, taken),
        ...hearWorks(talk, clause, taken),
        ...hearGood(talk, clause, taken),
      ];
  const advised = unknown.length > 0 ? [] : hearAdvice(talk, clause, states.at(-1) ?? last);
  const found = [...tested, ...absent, ...unknown, ...cause, ...identity, ...numbers, ...states, ...advised];
  const present = unknown.length > 0 ? [] : hearPresence(talk, clause, new Set(found.map((d) => d.part)));
  return [...found, ...present, ...praise];
}

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
