// Why: one slow run on a busy machine says nothing; the middle of several does.

/** The middle of the times, in ms, that `job` takes in so many runs. */
export async function medianMs(runs: number, job: () => unknown): Promise<number> {
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const began = performance.now();
    await job();
    times.push(performance.now() - began);
  }
  times.sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)]!;
}

/** "1.24 s" or "87 ms". */
export const showMs = (ms: number): string =>
  ms >= 1000 ? `${(ms / 1000).toFixed(2)} s` : `${ms.toFixed(ms < 10 ? 1 : 0)} ms`;
