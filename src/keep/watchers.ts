// Why: one listener that throws must not keep the others, or the append, from going on.
import type { Kept } from './log.ts';

export class Watchers {
  readonly #listeners = new Set<(kept: readonly Kept[]) => void>();

  /** Returns how to stop. */
  add(listener: (kept: readonly Kept[]) => void): () => void {
    const own = (kept: readonly Kept[]): void => listener(kept);
    this.#listeners.add(own);
    return () => this.#listeners.delete(own);
  }

  /** Calls every listener. What a listener throws is thrown on its own, as a programmer's mistake. */
  tell(kept: readonly Kept[]): void {
    if (kept.length === 0) return;
    for (const listener of this.#listeners) {
      try {
        listener(kept);
      } catch (error) {
        queueMicrotask(() => {
          throw error;
        });
      }
    }
  }
}
