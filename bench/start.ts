// Why: `npm start` a second time must take seconds; measured from the command to the first answered request.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Measured } from './main.ts';
import { showMs } from './median.ts';

const root = join(import.meta.dirname, '..');

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const server = createServer();
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });

/** From `npm start` to the yard's first answer, in ms; then stops it. */
async function startOnce(data: string): Promise<number> {
  const port = await freePort();
  const began = performance.now();
  const child = spawn('npm', ['start', '--silent'], {
    cwd: root,
    env: { ...process.env, PORT: String(port), WALKWRIGHT_DATA: data },
    stdio: 'ignore',
    detached: true,
  });
  try {
    for (;;) {
      if (performance.now() - began > 120_000) throw new Error('npm start did not answer within two minutes');
      const answer = await fetch(`http://127.0.0.1:${port}/api/units`).catch(() => undefined);
      if (answer?.ok) return performance.now() - began;
      await new Promise((r) => setTimeout(r, 25));
    }
  } finally {
    if (child.pid) process.kill(-child.pid, 'SIGTERM');
    await new Promise((r) => child.once('exit', r));
  }
}

export async function benchStart(): Promise<readonly Measured[]> {
  const data = mkdtempSync(join(tmpdir(), 'walkwright-bench-'));
  const first = await startOnce(data);
  const again: number[] = [];
  for (let i = 0; i < 3; i++) again.push(await startOnce(data));
  again.sort((a, b) => a - b);
  rmSync(data, { recursive: true, force: true });
  const second = again[1]!;
  return [
    {
      name: 'npm start after set-up, to the first answer',
      measured: `${showMs(second)} with data kept`,
      instead: `the first time, with the demo walks read in: ${showMs(first)}`,
      ratio: `${(first / second).toFixed(1)} times faster`,
    },
  ];
}
