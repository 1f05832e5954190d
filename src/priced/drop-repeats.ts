// Why: the same unit offered at three places is one price, not three.
import type { Comparable } from '../said/entry.ts';
import { weighing } from './adjustment.ts';

/** Those that stand, and those that are a unit which stands already, with its ref. Best first. */
export interface Unrepeated {
  readonly kept: readonly Comparable[];
  readonly repeats: readonly { readonly comparable: Comparable; readonly of: string }[];
}

/**
 * Drops units counted twice: same kind and model year and either the same ref, or miles and price that are nearly the same.
 * The sold one stands, then the one seen last. The order they come in makes no difference.
 */
export function dropRepeats(comparables: readonly Comparable[]): Unrepeated {
  const kept: Comparable[] = [];
  const repeats: { readonly comparable: Comparable; readonly of: string }[] = [];
  for (const c of comparables.toSorted(bestFirst)) {
    const same = kept.find((s) => isSame(s, c));
    if (same === undefined) kept.push(c);
    else repeats.push({ comparable: c, of: same.ref });
  }
  return { kept, repeats };
}

function bestFirst(a: Comparable, b: Comparable): number {
  const sold = Number(b.soldCents !== undefined) - Number(a.soldCents !== undefined);
  if (sold !== 0) return sold;
  if (a.on !== b.on) return a.on < b.on ? 1 : -1;
  const textA = JSON.stringify(a);
  const textB = JSON.stringify(b);
  return textA < textB ? -1 : textA > textB ? 1 : 0;
}

function isSame(a: Comparable, b: Comparable): boolean {
  if (a.vehicle !== b.vehicle || a.year !== b.year) return false;
  if (a.ref === b.ref) return true;
  if (a.miles === undefined || b.miles === undefined || Math.abs(a.miles - b.miles) > weighing.sameMiles)
    return false;
  if (a.lengthFt !== undefined && b.lengthFt !== undefined && Math.abs(a.lengthFt - b.lengthFt) > 0.5)
    return false;
  const near = (x: number | undefined, y: number | undefined): boolean =>
    x !== undefined && y !== undefined && Math.abs(x - y) <= weighing.samePrice * Math.max(x, y);
  return near(a.askCents, b.askCents) || near(a.soldCents, b.soldCents);
}
