// Why: with a handful of weighted prices the range must not jump from one price to the next when a weight moves a little.

/** A number and how much it counts. */
export interface Weighted {
  readonly value: number;
  readonly weight: number;
}

/**
 * The value below which the part `p` (0 to 1) of the weight lies. Each value sits in the middle of its own weight; between two
 * values it is interpolated, beyond the outermost it stays there. Throws RangeError without any weight.
 */
export function weightedQuantile(values: readonly Weighted[], p: number): number {
  const sorted = values.filter((v) => v.weight > 0).toSorted((a, b) => a.value - b.value);
  const first = sorted[0];
  if (first === undefined) throw new RangeError('weightedQuantile: nothing to take it of');
  const target = p * sorted.reduce((sum, v) => sum + v.weight, 0);
  let before = 0;
  let last = { at: first.weight / 2, value: first.value };
  if (target <= last.at) return first.value;
  for (const v of sorted) {
    const at = before + v.weight / 2;
    if (at >= target && at > last.at)
      return last.value + ((target - last.at) / (at - last.at)) * (v.value - last.value);
    last = { at, value: v.value };
    before += v.weight;
  }
  return last.value;
}
