// Why: the contract of the log, whatever keeps it: appended, never changed, acknowledged only when it would survive a power cut.
import type { Entry } from '../said/entry.ts';

/** Where a listener or a reader has got to in a dealership's log: counts appended entries, from 1. */
export type Position = number;

export interface Kept {
  readonly position: Position;
  readonly entry: Entry;
}

/** What happened to each entry handed in. */
export type Appended =
  | { readonly is: 'kept'; readonly id: string; readonly position: Position }
  /** The same id with the same content was there already: harmless. */
  | { readonly is: 'already kept'; readonly id: string; readonly position: Position }
  /** The same id with other content was there already: refused, nothing changed. */
  | { readonly is: 'refused'; readonly id: string; readonly code: 'id-taken' };

/** What a yard or a unit asks for. `after` is exclusive. */
export interface Wanted {
  readonly dealership: string;
  readonly unit?: string;
  readonly after?: Position;
  readonly limit?: number;
}

/** One unit in the yard, as the index has it. */
export interface UnitRow {
  readonly unit: string;
  readonly entries: number;
  readonly firstAt: string;
  readonly last: Position;
}

export interface Log {
  /** Appends entries that have been through the door (readEntry). Resolves when every one that is kept is on disk. */
  append(entries: readonly Entry[]): Promise<readonly Appended[]>;
  /** Entries in the order in which they were kept. */
  read(wanted: Wanted): Promise<readonly Kept[]>;
  units(dealership: string): Promise<readonly UnitRow[]>;
  /** Calls back after entries have been kept; returns how to stop. */
  watch(listener: (kept: readonly Kept[]) => void): () => void;
  /** Every entry as journal lines, in order: backup, and the way from one keeper to another. */
  export(): AsyncIterable<string>;
  /** Reads journal lines; keeps what is sound, names what is not. */
  import(
    lines: AsyncIterable<string> | Iterable<string>,
    progress?: (done: number) => void,
  ): Promise<Imported>;
  close(): Promise<void>;
}

export interface Imported {
  readonly kept: number;
  readonly already: number;
  readonly refused: readonly string[];
  readonly damaged: readonly Damage[];
}

/** Where a journal was found damaged. Everything before it is kept. */
export interface Damage {
  readonly file: string;
  readonly line: number;
  readonly code: 'cut-short' | 'checksum' | 'not-json' | 'not-an-entry' | 'out-of-order';
  readonly detail: string;
}

/** Media by content: the bytes are the key. */
export interface MediaStore {
  put(
    bytes: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
    limit?: number,
  ): Promise<{ readonly sha256: string; readonly bytes: number }>;
  has(sha256: string): Promise<boolean>;
  /** A part of the bytes, for a player that seeks; `end` is inclusive. */
  open(
    sha256: string,
    range?: { readonly start: number; readonly end: number },
  ): Promise<AsyncIterable<Uint8Array> | undefined>;
  size(sha256: string): Promise<number | undefined>;
}
