// Why: a transcript becomes the words kept whole, and what was heard in them as proposals; a corrected one stays, replaced.
import type { VehicleKind } from '../../catalogue/vehicle-kind.ts';
import type { Cue, Entry } from '../../said/entry.ts';
import { hear } from '../../said/hear/hear.ts';
import { readTranscript } from '../../said/transcript/read-transcript.ts';
import { sayWalk } from '../words/say-account.ts';
import type { Draft } from './make-entries.ts';
import { addSeconds } from './read-when.ts';
import type { Reader, Reading } from './reading.ts';
import { FileRefusal } from './walk-file.ts';

/** The log takes so many cues in one entry; a longer transcript is kept in several. */
const mostCues = 50_000;

const thousandths = (seconds: number): number => Math.round(seconds * 1000) / 1000;

/** The log takes so many characters in one cue. */
const mostLetters = 20_000;
const shorten = (cue: Cue): readonly Cue[] => {
  if (cue.text.length <= mostLetters) return [cue];
  const pieces = Math.ceil(cue.text.length / mostLetters);
  return Array.from({ length: pieces }, (_, i) => ({
    ...cue,
    text: cue.text.slice(i * mostLetters, (i + 1) * mostLetters),
  }));
};

/**
 * Reads a transcript. The entries are made here, in the order in which they were said, because an observation that corrects
 * an earlier one names it by the id it was given.
 * @param kind the kind of vehicle, where it is known
 * @param pause called between the stretches of a very long transcript; what it throws ends the reading
 */
export async function readWalk(
  { file, text, about }: Reader,
  make: (draft: Draft) => Entry,
  kind: VehicleKind | undefined,
  pause: (share: number) => Promise<void> = async () => {},
): Promise<Reading> {
  const { cues: whole, puzzles } = readTranscript(file.name, text);
  const cues = whole.flatMap(shorten);
  const faults = puzzles.map((p) => ({ file: file.name, ...p }));
  if (cues.length === 0)
    throw new FileRefusal(
      faults[0] ?? { file: file.name, line: 0, code: 'transcript-empty', raw: text.slice(0, 400) },
    );
  for (let from = 0; from < cues.length; from += mostCues) {
    make({
      kind: 'transcript',
      walk: about.walk,
      media: file.media.id,
      cues: cues.slice(from, from + mostCues),
    });
  }
  let proposed = 0;
  /** Taken back with nothing put in its place: the speaker's own ruling. */
  const takenBack = new Set<string>();
  const stretches = cutStretches(cues);
  for (const [at, stretch] of stretches.entries()) {
    if (at > 0) await pause(at / stretches.length);
    take(hear(stretch, kind ? { vehicle: kind } : {}).observations);
  }
  for (const id of takenBack) {
    make({
      kind: 'ruling',
      on: id,
      ruling: 'reject',
      why: 'Taken back by the speaker in the same recording.',
    });
  }
  return { drafts: [], faults, account: [sayWalk(file.name, cues.length, proposed, faults.length)] };

  function take(observations: ReturnType<typeof hear>['observations']): void {
    const ids: string[] = [];
    for (const o of observations) {
      const replaces = (o.corrects ?? []).flatMap((i) => ids[i] ?? []).slice(0, 50);
      const made = make({
        kind: 'observation',
        walk: about.walk,
        part: o.part,
        aspect: o.aspect,
        value: o.value,
        sense: o.sense,
        polarity: o.polarity,
        hedged: o.hedged,
        sure: o.sure,
        source: {
          from: 'speech',
          media: file.media.id,
          start: thousandths(o.start),
          end: thousandths(o.end),
          words: o.words,
        },
        at: addSeconds(about.at, o.start),
        ...(o.place === undefined ? {} : { place: o.place }),
        ...(o.saidBy === undefined ? {} : { saidBy: o.saidBy }),
        ...(replaces.length > 0 ? { replaces } : {}),
      });
      ids.push(made.id);
      if (o.retracted) takenBack.add(made.id);
      for (const id of replaces) takenBack.delete(id);
    }
    proposed += ids.length;
  }
}

/** About three hours of talk: longer ones are heard a stretch at a time, each from its own beginning. */
const mostLettersAtOnce = 150_000;

/** One stretch for any walk that a person takes; the cut of a longer one falls between two cues. */
function cutStretches(cues: readonly Cue[]): readonly (readonly Cue[])[] {
  const stretches: Cue[][] = [[]];
  let letters = 0;
  for (const cue of cues) {
    if (letters > 0 && letters + cue.text.length > mostLettersAtOnce) {
      stretches.push([]);
      letters = 0;
    }
    stretches.at(-1)!.push(cue);
    letters += cue.text.length;
  }
  return stretches;
}
