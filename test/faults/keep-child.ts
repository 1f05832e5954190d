// Why: bundles the appending process once, so that fifty of them start in milliseconds, and kills it at a chosen moment.
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';

const root = resolve(import.meta.dirname, '../..');

/** Inside the project, so that packages left out of the bundle are found. */
export function bundleChild(): { readonly file: string; remove(): void } {
  const folder = join(root, 'node_modules', '.cache', `walkwright-child-${process.pid}`);
  mkdirSync(folder, { recursive: true });
  buildSync({
    entryPoints: {
      child: fileURLToPath(new URL('./keep-append-child.ts', import.meta.url)),
      'keep-worker': join(root, 'src/keep/index-pglite/worker.ts'),
    },
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    outdir: folder,
    outExtension: { '.js': '.mjs' },
    logLevel: 'error',
  });
  return { file: join(folder, 'child.mjs'), remove: () => rmSync(folder, { recursive: true, force: true }) };
}

export interface Ran {
  /** Numbers of the entries that were acknowledged before the end. */
  readonly acknowledged: readonly number[];
  readonly finished: boolean;
  readonly signal: NodeJS.Signals | null;
}

export interface Running {
  readonly process: ChildProcess;
  readonly ended: Promise<Ran>;
}

/** Starts it; `heard` is called with every line it says. */
export function startChild(
  file: string,
  args: readonly string[],
  heard: (line: string, acknowledged: number) => void,
): Running {
  const child = spawn(process.execPath, [file, ...args], { stdio: ['ignore', 'pipe', 'pipe'] });
  const acknowledged: number[] = [];
  let finished = false;
  let rest = '';
  let errors = '';
  child.stderr.on('data', (chunk) => {
    errors += String(chunk);
  });
  child.stdout.on('data', (chunk) => {
    const lines = (rest + String(chunk)).split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) {
      const [word, from, size] = line.split(' ');
      if (word === 'all') finished = true;
      if (word === 'kept') for (let at = 0; at < Number(size); at++) acknowledged.push(Number(from) + at);
      heard(line, acknowledged.length);
    }
  });
  const ended = new Promise<Ran>((resolve, reject) => {
    child.on('close', (code, signal) => {
      if (code !== null && code !== 0) reject(new Error(`the child ended with ${code}: ${errors}`));
      else resolve({ acknowledged, finished, signal });
    });
  });
  return { process: child, ended };
}

/** Runs it and kills it with SIGKILL, `wait` milliseconds after so many entries were acknowledged. */
export function killAfter(
  file: string,
  args: readonly string[],
  acknowledged: number,
  wait: number,
): Promise<Ran> {
  let struck = false;
  const running = startChild(file, args, (_line, count) => {
    if (struck || count < acknowledged) return;
    struck = true;
    setTimeout(() => running.process.kill('SIGKILL'), wait);
  });
  return running.ended;
}
