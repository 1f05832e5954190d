// Why: thousands of phrases are looked for at every word; an index by first word keeps that quick.
import { normsOf } from './word.ts';

interface Entry<T> {
  readonly norms: readonly string[];
  readonly values: T[];
}

/** A phrase found: how many words it takes and what it stands for. */
export interface Hit<T> {
  readonly length: number;
  readonly values: readonly T[];
}

/** Phrases by their first word, longest first. */
export class PhraseIndex<T> {
  private readonly byFirst = new Map<string, Entry<T>[]>();

  /** Adds a phrase. The same phrase may stand for several things; the order of adding is kept. */
  add(phrase: string, value: T): this {
    const norms = normsOf(phrase);
    const first = norms[0];
    if (first === undefined) return this;
    const list = this.byFirst.get(first) ?? [];
    const same = list.find((e) => e.norms.length === norms.length && e.norms.every((n, i) => n === norms[i]));
    if (same) {
      if (!same.values.includes(value)) same.values.push(value);
      return this;
    }
    list.push({ norms, values: [value] });
    list.sort((a, b) => b.norms.length - a.norms.length);
    this.byFirst.set(first, list);
    return this;
  }

  /** The longest phrase that begins at word `i` and runs over no stop greater than `over` (1: commas may stand in it). */
  at(
    words: readonly { readonly norm: string; readonly stop?: number }[],
    i: number,
    over = 0,
  ): Hit<T> | undefined {
    const word = words[i];
    if (!word) return undefined;
    const list = this.byFirst.get(word.norm);
    if (!list) return undefined;
    for (const entry of list) {
      let k = 1;
      while (
        k < entry.norms.length &&
        (words[i + k - 1]?.stop ?? 0) <= over &&
        words[i + k]?.norm === entry.norms[k]
      )
        k++;
      if (k === entry.norms.length) return { length: k, values: entry.values };
    }
    return undefined;
  }
}

/** An index of phrases that stand for themselves or for one value each, from a table. */
export function phrasesOf<T>(table: Readonly<Record<string, T>>): PhraseIndex<T> {
  const index = new PhraseIndex<T>();
  for (const [phrase, value] of Object.entries(table)) index.add(phrase, value);
  return index;
}

/** An index of a list of phrases, each standing for `true`. */
export function phraseList(phrases: readonly string[]): PhraseIndex<true> {
  const index = new PhraseIndex<true>();
  for (const p of phrases) index.add(p, true);
  return index;
}
