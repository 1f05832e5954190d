// Why: a number said or written to a digit is known to half of that digit and no better; this says how much that is.

/** Trailing noughts may be rounding ("forty-eight thousand") or exact ("one hundred"): at most this part of the value. */
const roundShare = 0.025;

/**
 * Plus-or-minus of a number that came without one: half of its last digit; for whole numbers that end in noughts half of the
 * last other digit's place, but at most 2.5 % of the value and at least a half. House default, in the number's own unit.
 * @example digitDoubt(12.6) // 0.05
 */
export function digitDoubt(value: number): number {
  const size = Math.abs(value);
  if (!Number.isInteger(size)) {
    const decimals = /\.(\d+)/.exec(String(size))?.[1]?.length ?? 6;
    return 0.5 * 10 ** -Math.min(decimals, 6);
  }
  const noughts = size === 0 ? 0 : (/0*$/.exec(size.toFixed(0))?.[0].length ?? 0);
  if (noughts === 0) return 0.5;
  return Math.min(0.5 * 10 ** noughts, Math.max(0.5, roundShare * size));
}
