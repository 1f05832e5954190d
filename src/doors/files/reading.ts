// Why: every reader of a file hands back the same things: what was understood, what was not, and one line of account.
import type { AccountLine } from '../wire/api.ts';
import type { About, Draft } from './make-entries.ts';
import type { FileFault, WalkFile } from './walk-file.ts';

/** What a reader is given. */
export interface Reader {
  readonly file: WalkFile;
  readonly text: string;
  readonly about: About;
}

/** What a reader gives. Faults become puzzles, so that the raw words stay in the log. */
export interface Reading {
  readonly drafts: readonly Draft[];
  readonly faults: readonly FileFault[];
  readonly account: readonly AccountLine[];
}
