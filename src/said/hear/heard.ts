// Why: what hearing hands on: observations not yet in the log, where the walk was, and which cues gave nothing.
import type { Observation } from '../entry.ts';

/** One thing heard. Times in seconds of the recording; `words` are exact. */
export type HeardObservation = Pick<
  Observation,
  'part' | 'place' | 'aspect' | 'value' | 'sense' | 'polarity' | 'hedged' | 'saidBy' | 'sure'
> & {
  /** What else was said of where it is, or under what it was read: "over sink", "on LP". */
  readonly where?: string;
  readonly start: number;
  readonly end: number;
  readonly words: string;
  /** The exact words by which the part was named; absent where it was only talked about. */
  readonly named?: string;
  /** The word it turns on. */
  readonly key?: string;
  /** Indexes of observations in the same list that this one replaces. */
  readonly corrects?: number[];
  /** Taken back by the speaker. */
  readonly retracted?: true;
};

/** A recording heard. `used` and `unused` are indexes of cues and together name every cue once. */
export interface Heard {
  readonly observations: HeardObservation[];
  readonly chapters: { station: string; start: number; end: number }[];
  readonly used: number[];
  readonly unused: number[];
}
