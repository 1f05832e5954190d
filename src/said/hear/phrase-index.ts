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

/** What begins with one word: the word alone, and longer phrases by their second word. */
interface Begun<T> {
  alone?: Entry<T>;
  readonly longer: Map<string, Entry<T>[]>;
}

/** Phrases by their first two words, longest first. */
export class PhraseIndex<T> {
  private readonly byFirst = new Map<string, Begun<T>>();

  /** Adds a phrase. The same phrase may stand for several things; the order of adding is kept. */
  add(phrase: string, value: T): this {
    const norms = normsOf(phrase);
    const [first, second] = norms;
    if (first === undefined) return this;
    const begun = this.byFirst.get(first) ?? { longer: new Map<string, Entry<T>[]>() };
    this.byFirst.set(first, begun);
    const list = second === undefined ? (begun.alone ? [begun.alone] : []) : (begun.longer.get(second) ?? []);
    const same = list.find((e) => e.norms.length === norms.length && e.norms.every((n, i) => n === norms[i]));
    if (same) {
      if (!same.values.includes(value)) same.values.push(value);
      return this;
    }
    const entry = { norms, values: [value] };
    if (second === undefined) begun.alone = entry;
    else {
      list.push(entry);
      list.sort((a, b) => b.norms.length - a.norms.length);
      begun.longer.set(second, list);
    }
    return this;
  }

  /** The longest phrase that begins at word `i` and runs over no stop greater than `over` (1: commas may stand in it). */
  at(
    words: readonly { readonly norm: string; readonly stop?: number }[],
    i: number,
    over = 0,
  ): Hit<T> | undefined {
    const word = words[i];
    const begun = word && this.byFirst.get(word.norm);
    if (!begun) return undefined;
    const next = (word.stop ?? 0) <= over ? words[i + 1] : undefined;
    for (const entry of (next && begun.longer.get(next.norm)) ?? []) {
      let k = 2;
      while (
        k < entry.norms.length &&
        (words[i + k - 1]?.stop ?? 0) <= over &&
        words[i + k]?.norm === entry.norms[k]
      )
        k++;
      if (k === entry.norms.length) return { length: k, values: entry.values };
    }
    return begun.alone ? { length: 1, values: begun.alone.values } : undefined;
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
