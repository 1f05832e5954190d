// Why: a maker's name is kept as it was written, capitals and all.
import type { Talk } from './talk.ts';

const writtenOf = new WeakMap<Talk, readonly string[]>();
/** Gives a talk its written words. */
export const knowWritten = (talk: Talk, written: readonly string[]): void =>
  void writtenOf.set(talk, written);
/** The written word as a name: without punctuation and without a possessive. */
export const nameAt = (talk: Talk, i: number): string =>
  (writtenOf.get(talk)?.[i] ?? '').replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '').replace(/['’]s$/, '');
