// Why: what begins or ends at a word is asked for at every word; a look-up keeps hearing linear in the length of a walk.

/** Things marked on the stream, by the word they begin and the word they end at. */
export class MarkedAt<T extends { readonly from: number; readonly to: number }> {
  private readonly begins = new Map<number, T>();
  private readonly ends = new Map<number, T>();

  constructor(items: readonly T[]) {
    for (const item of items) {
      this.begins.set(item.from, item);
      this.ends.set(item.to, item);
    }
  }

  /** The one that begins at the word. */
  from(i: number): T | undefined {
    return this.begins.get(i);
  }

  /** The one whose last word is right before the word. */
  to(i: number): T | undefined {
    return this.ends.get(i);
  }
}
