// Why: in the built program the index's worker is a file beside it; run from the sources the keeper finds its own.
import { existsSync } from 'node:fs';

/** The built worker beside this program, when there is one. */
export function workerUrl(): URL | undefined {
  const beside = new URL('./keep-worker.mjs', import.meta.url);
  return existsSync(beside) ? beside : undefined;
}
