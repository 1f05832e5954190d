// Why: whatever was ruled here can be taken back, several steps deep; nothing is removed, taking back is a ruling of its own.
import type { Ruling } from '../../../said/entry.ts';

/** One thing the reviewer did: how it is called, where he stood, and the rulings that bring back what was before. */
export interface Step {
  readonly says: string;
  /** The observation that was in focus. */
  readonly at: string | undefined;
  readonly back: readonly { readonly on: string; readonly ruling: Ruling['ruling'] }[];
}

const deepest = 200;
const key = (unit: string): string => `walkwright.review.${unit}`;

/** The steps taken in this window, oldest first; they outlast going to another sheet and loading the page again. */
export function stepsOf(unit: string): readonly Step[] {
  try {
    return JSON.parse(sessionStorage.getItem(key(unit)) ?? '[]') as readonly Step[];
  } catch {
    return [];
  }
}

/** Keeps the steps; without room for them they last as long as the sheet does. */
export function keepSteps(unit: string, steps: readonly Step[]): readonly Step[] {
  const kept = steps.slice(-deepest);
  try {
    sessionStorage.setItem(key(unit), JSON.stringify(kept));
  } catch {
    sessionStorage.removeItem(key(unit));
  }
  return kept;
}
