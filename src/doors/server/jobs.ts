// Why: long work runs beside the answers: asked how far it is, stopped when nobody wants it any more.
import { randomUUID } from 'node:crypto';
import type { AccountLine, JobReply } from '../wire/api.ts';
import { asRefusal } from './refusal.ts';

export interface Jobs {
  /** Starts work; it is told by its signal when it should stop. One job a key: asking again while it runs gives the same job. */
  start(
    key: string,
    work: (
      progress: (share: number, doing: string) => void,
      signal: AbortSignal,
    ) => Promise<readonly AccountLine[]>,
  ): JobReply;
  get(job: string): JobReply | undefined;
  stop(job: string): JobReply | undefined;
  /** Stops all and waits for them. */
  close(): Promise<void>;
}

/** Finished jobs stay to be asked about, up to so many. */
const mostKept = 200;

export function makeJobs(complain: (error: unknown) => void): Jobs {
  interface Running {
    reply: JobReply;
    readonly stop: AbortController;
    readonly key: string;
    done: Promise<void>;
  }
  const jobs = new Map<string, Running>();
  const isOver = (r: Running): boolean => r.reply.state !== 'running' && r.reply.state !== 'waiting';

  return {
    start(key, work) {
      const same = [...jobs.values()].find((r) => r.key === key && !isOver(r));
      if (same) return same.reply;
      for (const [id, r] of jobs) if (jobs.size >= mostKept && isOver(r)) jobs.delete(id);
      const job = randomUUID();
      const running: Running = {
        reply: { job, state: 'running', progress: 0, doing: '', account: [] },
        stop: new AbortController(),
        key,
        done: Promise.resolve(),
      };
      jobs.set(job, running);
      const set = (part: Partial<JobReply>): void => {
        running.reply = { ...running.reply, ...part };
      };
      running.done = (async () => {
        try {
          const account = await work((progress, doing) => set({ progress, doing }), running.stop.signal);
          set({ state: 'done', progress: 1, doing: '', account });
        } catch (error) {
          if (running.stop.signal.aborted) set({ state: 'stopped', doing: '' });
          else {
            const refusal = asRefusal(error);
            if (refusal.problem.code === 'unexpected') complain(error);
            set({ state: 'failed', doing: '', problem: refusal.problem });
          }
        }
      })();
      return running.reply;
    },
    get: (job) => jobs.get(job)?.reply,
    stop(job) {
      const running = jobs.get(job);
      if (running && !isOver(running)) running.stop.abort();
      return running?.reply;
    },
    async close() {
      for (const r of jobs.values()) r.stop.abort();
      await Promise.all([...jobs.values()].map((r) => r.done));
    },
  };
}
