// Why: "sure" is fitted on the walks; a small logistic regression needs no library.
// Newton's method with a ridge (D. Hosmer and S. Lemeshow, Applied Logistic Regression, describe it; the numbers are worked out here).

/** Solves a x = b for a small symmetric positive matrix; a is used up. */
function solve(a: number[][], b: number[]): number[] {
  const n = b.length;
  for (let i = 0; i < n; i++) {
    const row = a[i] as number[];
    const pivot = row[i] as number;
    for (let k = i + 1; k < n; k++) {
      const lower = a[k] as number[];
      const f = (lower[i] as number) / pivot;
      if (f === 0) continue;
      for (let j = i; j < n; j++) lower[j] = (lower[j] as number) - f * (row[j] as number);
      b[k] = (b[k] as number) - f * (b[i] as number);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let s = b[i] as number;
    for (let j = i + 1; j < n; j++) s -= ((a[i] as number[])[j] as number) * (x[j] as number);
    x[i] = s / ((a[i] as number[])[i] as number);
  }
  return x;
}

/** The weights that make the labels likeliest, with a ridge that keeps rare features small. */
export function fitLogistic(
  rows: readonly { readonly x: readonly number[]; readonly right: boolean }[],
  ridge = 2,
): number[] {
  const n = rows[0]?.x.length ?? 0;
  let w = new Array<number>(n).fill(0);
  for (let step = 0; step < 25; step++) {
    const hessian = Array.from({ length: n }, (_, i) =>
      Array.from({ length: n }, (_, j) => (i === j ? (i === 0 ? 1e-6 : ridge) : 0)),
    );
    const slope = w.map((v, i) => -(i === 0 ? 1e-6 : ridge) * v);
    for (const { x, right } of rows) {
      const z = x.reduce((s, v, k) => s + v * (w[k] as number), 0);
      const p = 1 / (1 + Math.exp(-z));
      const q = Math.max(1e-6, p * (1 - p));
      for (let i = 0; i < n; i++) {
        const xi = x[i] as number;
        if (xi === 0) continue;
        slope[i] = (slope[i] as number) + xi * ((right ? 1 : 0) - p);
        const line = hessian[i] as number[];
        for (let j = 0; j < n; j++) line[j] = (line[j] as number) + q * xi * (x[j] as number);
      }
    }
    const move = solve(hessian, slope);
    w = w.map((v, i) => v + (move[i] as number));
    if (move.every((m) => Math.abs(m) < 1e-6)) break;
  }
  return w;
}
