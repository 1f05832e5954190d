// Why: from timed words to drafts of observations, in the order in which one step needs the other.
import { partOf } from '../../catalogue/index.ts';
import type { VehicleKind } from '../../catalogue/vehicle-kind.ts';
import type { Cue } from '../entry.ts';
import { type Clause, clausesOf, type Draft } from './clause.ts';
import { type Corrected, correctDrafts } from './correct.ts';
import { hearAdvice } from './hear-advice.ts';
import { hearAirBrakes } from './hear-air-brakes.ts';
import { hearAnswer } from './hear-answer.ts';
import { hearCause } from './hear-cause.ts';
import { hearDrive } from './hear-drive.ts';
import { hearEffort } from './hear-effort.ts';
import { hearExcept } from './hear-except.ts';
import { hearFill, hearFillBefore } from './hear-fill.ts';
import { hearGood } from './hear-good.ts';
import { hearIdentity } from './hear-identity.ts';
import { hearLacking } from './hear-lacking.ts';
import { hearLikewise } from './hear-likewise.ts';
import { hearNoneOf } from './hear-none-of.ts';
import { hearNumbers } from './hear-numbers.ts';
import { hearOff } from './hear-off.ts';
import { hearOne, hearTries } from './hear-one.ts';
import { hearOwner } from './hear-owner.ts';
import { hearPraise } from './hear-praise.ts';
import { hearAbsence, hearPresence } from './hear-presence.ts';
import { hearRoad } from './hear-road.ts';
import { hearSmell } from './hear-smell.ts';
import { hearStates } from './hear-states.ts';
import { hearUnknown } from './hear-unknown.ts';
import { hearWarnings } from './hear-warnings.ts';
import { hearWheel } from './hear-wheel.ts';
import { hearWorks } from './hear-works.ts';
import { joinTypes } from './join-types.ts';
import type { MarkedAt } from './marked-at.ts';
import { type Marks, markWords } from './marks.ts';
import type { Mention } from './mention.ts';
import { numberedApart } from './numbered.ts';
import { plainOrder } from './plain-order.ts';
import { restoreStops } from './restore-stops.ts';
import { scopesOf } from './scope.ts';
import { putRight } from './sound-alike.ts';
import { stationPath } from './station-path.ts';
import { Talk } from './talk.ts';
import { hearSameWeek } from './tire-row.ts';
import { setLoadsApart } from './without-load.ts';
import { type Words, wordsOf } from './word.ts';
import { knowWritten } from './written-name.ts';

/** A recording understood: its words, what is marked in them, and the drafts with what corrects what. */
export interface Understood {
  readonly all: Words;
  readonly marks: Marks;
  readonly clauses: readonly Clause[];
  /** The station of each clause. */
  readonly path: readonly string[];
  readonly drafts: readonly Draft[];
  readonly corrected: Corrected;
}

/** Understands a recording. Pure and total. */
export function understand(
  cues: readonly Cue[],
  context: { readonly vehicle?: VehicleKind } = {},
): Understood {
  const spoken = wordsOf(cues);
  const all = { ...spoken, words: numberedApart(restoreStops(plainOrder(putRight(spoken.words)))) };
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
      if (isNobodys(talk, clause, d)) continue;
      if (context.vehicle && partOf(d.part)?.kinds.includes(context.vehicle) === false) continue;
      const where = talk.whereOf(d.part, d.at, clause, d.place);
      heard.push(where === undefined ? d : { ...d, where });
      if (d.sense !== 'claim') last = d;
      if (d.part === 'coach' && d.aspect === 'year')
        talk.recent.unshift({ parts: ['coach'], at: d.at, weak: false });
      if (d.sense === 'defect')
        talk.fault = { part: d.part, at: d.at, ...(d.place === undefined ? {} : { place: d.place }) };
    }
  }
  dropPresence(heard);
  heard.sort((a, b) => a.at - b.at);
  const apart = setLoadsApart(heard, all.words);
  joinTypes(apart, all.words);
  dropEchoes(apart, marks.mentionAt);
  const corrected = correctDrafts(marks, talk.scopes, apart);
  return { all, marks, clauses, path, drafts: corrected.drafts, corrected };
}

/** A state of the coach as a whole, where neither the coach nor "it" is spoken of: of somebody or something else. */
function isNobodys(talk: Talk, clause: Clause, d: Draft): boolean {
  if (d.part !== 'coach' || d.value.is !== 'state' || d.sense === 'claim') return false;
  if (clause.mentions.some((m) => m.parts.includes('coach'))) return false;
  if (talk.recent.slice(0, 2).some((r) => r.parts.includes('coach'))) return false;
  const { words } = talk.marks;
  return !words
    .slice(clause.from, Math.min(clause.to, clause.from + 4))
    .some((w) =>
      /^(?:it|she|he|this|that|whole|everything|it's|her|thing|they|all|nothing|overall)$/.test(w.norm),
    );
}

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
  const tested = [
    ...hearAirBrakes(talk, clause, taken),
    ...hearWheel(talk, clause, taken),
    ...hearRoad(talk, clause, taken),
    ...hearDrive(talk, clause, taken),
    ...hearAnswer(talk, clause, taken),
    ...hearOff(talk, clause, taken),
    ...hearFillBefore(talk, clause, taken),
  ];
  const praise = hearPraise(talk, clause);
  const cause = hearCause(talk, clause, last, taken);
  const unknown = cause.length > 0 ? [] : hearUnknown(talk, clause, taken);
  const absent = [...hearOwner(talk, clause, taken), ...hearAbsence(talk, clause, taken)];
  const identity = hearIdentity(talk, clause, taken);
  const numbers = [
    ...hearOne(talk, clause, taken),
    ...hearTries(talk, clause, taken),
    ...hearNumbers(talk, clause, taken),
    ...hearSameWeek(talk, clause, taken),
  ];
  const idle = praise.length > 0 && clause.numbers.length === 0 && clause.mentions.length === 0;
  const states: Draft[] = idle
    ? []
    : [
        ...hearSmell(talk, clause, taken),
        ...hearLacking(talk, clause, taken),
        ...hearWarnings(talk, clause, taken),
        ...hearFill(talk, clause, taken),
        ...hearEffort(talk, clause, taken),
        ...hearNoneOf(talk, clause, taken),
        ...hearWorks(talk, clause, taken),
        ...hearStates(talk, clause, taken),
        ...hearGood(talk, clause, taken),
      ];
  if (!idle && tested.length + absent.length + unknown.length + identity.length + states.length === 0)
    states.push(...hearLikewise(talk, clause, taken, last));
  // a job is spoken of once, whichever way it was heard
  const asked = unknown.length > 0 || states.some((d) => d.aspect === 'advice');
  const excepted = unknown.length > 0 ? [] : hearExcept(talk, clause, [...numbers, ...states], last, taken);
  const advised = asked ? [] : hearAdvice(talk, clause, states.at(-1) ?? last);
  const found = [
    ...tested,
    ...absent,
    ...unknown,
    ...cause,
    ...identity,
    ...numbers,
    ...states,
    ...excepted,
    ...advised,
  ];
  const present = unknown.length > 0 ? [] : hearPresence(talk, clause, new Set(found.map((d) => d.part)));
  return [...found, ...present, ...praise];
}
