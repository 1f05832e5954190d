// Why: starts the index's thread and turns its messages into promises, from TypeScript source and from a bundle alike.
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { KeepProblem } from '../problem.ts';
import type { FromWorker, ToWorker, WorkerSettings } from './messages.ts';

export interface IndexWorker {
  query(
    sql: string,
    parameters: readonly unknown[],
  ): Promise<{ readonly rows: readonly unknown[]; readonly affected: number }>;
  close(): Promise<void>;
}

/** What the database said no to. `code` is the SQLSTATE, as with other drivers. */
export class IndexQueryFailed extends Error {
  override readonly name = 'IndexQueryFailed';
  readonly code: string;
  constructor(message: string, code: string) {
    super(message);
    this.code = code;
  }
}

/** From source the worker is TypeScript and tsx reads it; in a bundle it is the separate file `keep-worker.mjs` beside it. */
function whereFrom(workerUrl: URL | undefined): URL {
  const source = import.meta.url.endsWith('.ts');
  const url = workerUrl ?? new URL(source ? './worker.ts' : './keep-worker.mjs', import.meta.url);
  if (!url.pathname.endsWith('.ts')) return url;
  const tsx = pathToFileURL(createRequire(import.meta.url).resolve('tsx/esm/api')).href.replace(
    /\.cjs$/,
    '.mjs',
  );
  const boot = `import { register } from '${tsx}'; register(); await import('${url.href}');`;
  return new URL(`data:text/javascript,${encodeURIComponent(boot)}`);
}

/** Resolves when the database in `folder` is open, making it when it is not there; `index-failed` when it cannot be. */
export function startWorker(folder: string, workerUrl?: URL): Promise<IndexWorker> {
  const settings: WorkerSettings = { folder };
  const worker = new Worker(whereFrom(workerUrl), { execArgv: [], workerData: settings });
  const waiting = new Map<
    number,
    { resolve: (message: FromWorker) => void; reject: (problem: unknown) => void }
  >();
  let asked = 0;
  let gone: KeepProblem | undefined;

  const ask = (make: (number: number) => ToWorker): Promise<FromWorker> => {
    if (gone) return Promise.reject(gone);
    const message = make(++asked);
    return new Promise((resolve, reject) => {
      waiting.set(message.number, { resolve, reject });
      worker.postMessage(message);
    });
  };

  const running: IndexWorker = {
    async query(sql, parameters) {
      const reply = await ask((number) => ({ ask: 'query', number, sql, parameters }));
      if (reply.is === 'failed') throw new IndexQueryFailed(reply.message, reply.sqlState);
      if (reply.is !== 'rows') throw new KeepProblem('index-failed', { reason: reply.is });
      return reply;
    },
    async close() {
      if (!gone) await ask((number) => ({ ask: 'close', number })).catch(() => undefined);
      await worker.terminate();
    },
  };

  return new Promise((resolve, reject) => {
    const end = (reason: string, cause?: unknown): void => {
      gone ??= new KeepProblem('index-failed', { reason }, cause);
      reject(gone);
      for (const one of waiting.values()) one.reject(gone);
      waiting.clear();
    };
    worker.on('message', (message: FromWorker) => {
      if (message.is === 'open') return resolve(running);
      if (message.is === 'not open') {
        end(message.reason);
        void worker.terminate();
        return;
      }
      const one = waiting.get(message.number);
      waiting.delete(message.number);
      one?.resolve(message);
    });
    worker.on('error', (error) => end(String(error), error));
    worker.on('exit', (code) => end(`the index worker ended with ${code}`));
  });
}
