// Why: "17, 18, 19, 20, 21" is read as five things; "17 to 21" as one.

/** Whole numbers in order, runs of three and more as "17 to 21". */
export function numberRuns(numbers: readonly number[]): string {
  const runs: [from: number, to: number][] = [];
  for (const n of [...new Set(numbers)].sort((a, b) => a - b)) {
    const open = runs.at(-1);
    if (open !== undefined && n === open[1] + 1) open[1] = n;
    else runs.push([n, n]);
  }
  return runs
    .flatMap(([from, to]) =>
      to - from > 1 ? [`${from} to ${to}`] : from === to ? [`${from}`] : [`${from}`, `${to}`],
    )
    .join(', ');
}
