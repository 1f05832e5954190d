// Why: what a reader could not understand is handed back with its line and its raw words, never dropped.

/** Something in a file that could not be read. `code` is a plain kebab word; `line` counts from 1. */
export interface Puzzled {
  readonly line: number;
  readonly code: string;
  readonly raw: string;
}
