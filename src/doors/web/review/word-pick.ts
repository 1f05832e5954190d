// Why: words that nothing was made of are chosen to make something of them: by mouse, by touch, or word by word from the keyboard.
import type { Cue } from '../../../said/entry.ts';

/** A word of a transcript: the cue it stands in, and where in the cue's text. */
export interface Word {
  readonly cue: number;
  readonly from: number;
  readonly to: number;
}

/** A run of words: where choosing began, and where it stands now; indexes of words, either may be the earlier. */
export interface Pick {
  readonly anchor: number;
  readonly focus: number;
}

/** Chosen words with the seconds they take, by their share of their cues. */
export interface Chosen {
  readonly words: string;
  readonly start: number;
  readonly end: number;
  /** What stands before them in the same cue, from its own second. */
  readonly lead: { readonly start: number; readonly text: string };
}

export const wordsOf = (cues: readonly Cue[]): readonly Word[] =>
  cues.flatMap((c, cue) =>
    [...c.text.matchAll(/\S+/g)].map((m) => ({ cue, from: m.index, to: m.index + m[0].length })),
  );

const least = (p: Pick): number => Math.min(p.anchor, p.focus);
const greatest = (p: Pick): number => Math.max(p.anchor, p.focus);
export const endsOf = (p: Pick): readonly [number, number] => [least(p), greatest(p)];

/** The words that a stretch of text touches; undefined when there are none. */
export function pickBetween(
  words: readonly Word[],
  from: { readonly cue: number; readonly at: number },
  to: { readonly cue: number; readonly at: number },
): Pick | undefined {
  const isAfter = (w: Word): boolean => w.cue > from.cue || (w.cue === from.cue && w.to > from.at);
  const isBefore = (w: Word): boolean => w.cue < to.cue || (w.cue === to.cue && w.from < to.at);
  const anchor = words.findIndex(isAfter);
  const focus = words.findLastIndex(isBefore);
  return anchor >= 0 && focus >= anchor ? { anchor, focus } : undefined;
}

/** Another word: along the line, or in the cue above or below at about the same place. `more` keeps what is chosen. */
export function movePick(
  words: readonly Word[],
  pick: Pick,
  by: 'left' | 'right' | 'up' | 'down',
  more: boolean,
): Pick {
  const to =
    by === 'left' || by === 'right' ? pick.focus + (by === 'left' ? -1 : 1) : overLine(words, pick.focus, by);
  const focus = Math.max(0, Math.min(words.length - 1, to));
  return { anchor: more ? pick.anchor : focus, focus };
}

function overLine(words: readonly Word[], at: number, by: 'up' | 'down'): number {
  const here = words[at];
  if (!here) return at;
  const line =
    words[
      by === 'up'
        ? words.findIndex((w) => w.cue === here.cue) - 1
        : words.findLastIndex((w) => w.cue === here.cue) + 1
    ];
  if (!line) return at;
  const first = words.findIndex((w) => w.cue === line.cue);
  const last = words.findLastIndex((w) => w.cue === line.cue);
  let best = first;
  for (let i = first; i <= last; i++)
    if (Math.abs((words[i]?.from ?? 0) - here.from) < Math.abs((words[best]?.from ?? 0) - here.from))
      best = i;
  return best;
}

const share = (cue: Cue, at: number): number =>
  cue.start + ((cue.end - cue.start) * at) / Math.max(1, cue.text.length);
const thousandth = (n: number): number => Math.round(n * 1000) / 1000;

/** The chosen words as they were spoken, with their seconds. */
export function chosenOf(cues: readonly Cue[], words: readonly Word[], pick: Pick): Chosen | undefined {
  const [first, last] = [words[least(pick)], words[greatest(pick)]];
  const [one, other] = [cues[first?.cue ?? -1], cues[last?.cue ?? -1]];
  if (!first || !last || !one || !other) return undefined;
  const text =
    first.cue === last.cue
      ? one.text.slice(first.from, last.to)
      : [
          one.text.slice(first.from),
          ...cues.slice(first.cue + 1, last.cue).map((c) => c.text),
          other.text.slice(0, last.to),
        ].join(' ');
  return {
    words: text,
    start: thousandth(share(one, first.from)),
    end: thousandth(share(other, last.to)),
    lead: { start: one.start, text: one.text.slice(0, first.from) },
  };
}
