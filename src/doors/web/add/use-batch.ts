// Why: files of a walk are sent one after another, then understood; each step shows how far it is and can be stopped.
import { useCallback, useRef, useState } from 'react';
import type { JobReply, Problem } from '../../wire/api.ts';
import { ask, tell } from '../ask/ask.ts';
import { newId } from '../kept/new-entry.ts';
import { writer } from '../kept/writer.ts';
import type { Chosen } from './dropped-files.ts';
import { sendFile } from './send-file.ts';

export interface BatchFile {
  readonly name: string;
  readonly bytes: number;
  /** 0 to 1. */
  readonly sent: number;
  readonly state: 'waits' | 'on its way' | 'sent' | 'not sent';
  readonly problem?: Problem;
}

export interface Batch {
  readonly step: 'nothing' | 'sending' | 'understanding' | 'done' | 'stopped' | 'trouble';
  readonly files: readonly BatchFile[];
  readonly job?: JobReply;
  readonly problem?: Problem;
}

const wait = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
const over: readonly JobReply['state'][] = ['done', 'stopped', 'failed'];

export function useBatch(unit: string, onUnderstood: () => void) {
  const [batch, setBatch] = useState<Batch>({ step: 'nothing', files: [] });
  const stopper = useRef<AbortController>(new AbortController());
  const job = useRef<string | undefined>(undefined);
  const chosen = useRef<{ readonly id: string; readonly files: readonly Chosen[] }>({ id: '', files: [] });

  const set = useCallback(
    (name: string, change: Partial<BatchFile>) =>
      setBatch((had) => ({
        ...had,
        files: had.files.map((f) => (f.name === name ? { ...f, ...change } : f)),
      })),
    [],
  );

  const understand = useCallback(
    async (id: string, stop: AbortSignal): Promise<void> => {
      setBatch((had) => ({ ...had, step: 'understanding' }));
      const began = await tell<JobReply>(`/api/units/${unit}/batches/${id}/understand`, {
        by: writer(),
        device: 'web',
      });
      if (!began.ok) return setBatch((had) => ({ ...had, step: 'trouble', problem: began.problem }));
      job.current = began.value.job;
      let now = began.value;
      while (!over.includes(now.state) && !stop.aborted) {
        setBatch((had) => ({ ...had, job: now }));
        await wait(400);
        const reply = await ask<JobReply>(`/api/jobs/${now.job}`);
        if (reply.ok) now = reply.value;
        else if (!reply.offline)
          return setBatch((had) => ({ ...had, step: 'trouble', problem: reply.problem }));
      }
      if (stop.aborted) return;
      const step = now.state === 'done' ? 'done' : now.state === 'stopped' ? 'stopped' : 'trouble';
      setBatch((had) => ({ ...had, job: now, step, ...(now.problem ? { problem: now.problem } : {}) }));
      onUnderstood();
    },
    [unit, onUnderstood],
  );

  /** Sends what has not gone yet, then has it understood. */
  const go = useCallback(
    async (already: ReadonlySet<string>): Promise<void> => {
      const stop = new AbortController();
      stopper.current = stop;
      const { id, files } = chosen.current;
      let lost = false;
      for (const { name, file } of files) {
        if (already.has(name)) continue;
        set(name, { state: 'on its way' });
        const address = `/api/units/${unit}/batches/${id}/files/${encodeURIComponent(name)}`;
        const sent = await sendFile(address, file, stop.signal, (share) => set(name, { sent: share }));
        if (stop.signal.aborted) return;
        if (sent.ok) set(name, { state: 'sent', sent: 1 });
        else set(name, { state: 'not sent', problem: sent.problem });
        lost ||= !sent.ok;
      }
      if (lost) setBatch((had) => ({ ...had, step: 'trouble' }));
      else await understand(id, stop.signal);
    },
    [unit, set, understand],
  );

  const start = useCallback(
    (files: readonly Chosen[]) => {
      if (files.length === 0) return;
      chosen.current = { id: newId(), files };
      setBatch({
        step: 'sending',
        files: files.map((f) => ({ name: f.name, bytes: f.file.size, sent: 0, state: 'waits' })),
      });
      void go(new Set());
    },
    [go],
  );

  const again = useCallback(() => {
    const already = new Set(batch.files.filter((f) => f.state === 'sent').map((f) => f.name));
    setBatch(({ files }) => ({
      step: 'sending',
      files: files.map((f) => ({
        name: f.name,
        bytes: f.bytes,
        ...(already.has(f.name) ? { sent: 1, state: 'sent' as const } : { sent: 0, state: 'waits' as const }),
      })),
    }));
    void go(already);
  }, [batch.files, go]);

  const understandAnyway = useCallback(
    () => void understand(chosen.current.id, stopper.current.signal),
    [understand],
  );

  const stop = useCallback(() => {
    stopper.current.abort();
    if (job.current) void ask(`/api/jobs/${job.current}`, { method: 'DELETE' });
    job.current = undefined;
    setBatch((had) => ({ ...had, step: 'stopped' }));
  }, []);

  return { batch, start, again, understandAnyway, stop };
}
