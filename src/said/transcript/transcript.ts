// Why: every reader of timed words hands back the same two things: what it understood and what puzzled it.
import type { Cue } from '../entry.ts';
import type { Puzzled } from './puzzled.ts';

/** Timed words in order, and what could not be read. Seconds from the start of the recording. */
export interface Transcript {
  readonly cues: Cue[];
  readonly puzzles: Puzzled[];
}
