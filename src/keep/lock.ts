// Why: two processes writing one folder would lose what was said; the second is told who has it.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { link, open, readFile, rename, rm, stat, utimes } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { errorCode, KeepProblem } from './problem.ts';

/** Who holds a folder. `started` tells a process from a later one that was given the same number. */
interface Holder {
  readonly pid: number;
  readonly started: string;
  readonly host: string;
  readonly since: string;
}

export interface Lock {
  release(): Promise<void>;
}

/** A holder on another host (or in another container) is believed as long as it keeps touching the file. */
const touchEvery = 10_000;
const believedFor = 60_000;

/** When a process began, as the system words it; nothing when it cannot be told. */
function startOf(pid: number): string | undefined {
  try {
    if (process.platform === 'linux') {
      const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
      const sinceBoot = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
      return `${readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()} ${sinceBoot}`;
    }
    if (process.platform === 'win32') return undefined;
    return execFileSync('ps', ['-o', 'lstart=', '-p', String(pid)], { encoding: 'utf8' }).trim() || undefined;
  } catch {
    return undefined;
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return errorCode(error) === 'EPERM';
  }
}

async function isHeld(file: string, holder: Holder | undefined): Promise<boolean> {
  if (!holder || holder.host !== hostname()) {
    const touched = await stat(file).then(
      (found) => found.mtimeMs,
      () => 0,
    );
    return Date.now() - touched < believedFor;
  }
  if (!isAlive(holder.pid)) return false;
  return holder.started === '' || (startOf(holder.pid) ?? holder.started) === holder.started;
}

function readHolder(text: string): Holder | undefined {
  try {
    const raw = JSON.parse(text) as Partial<Holder>;
    if (typeof raw.pid !== 'number' || typeof raw.started !== 'string') return undefined;
    return { pid: raw.pid, started: raw.started, host: raw.host ?? '', since: raw.since ?? '' };
  } catch {
    return undefined;
  }
}

/**
 * Takes the folder for this process alone. Throws `locked` with the pid, host and time of whoever has it; the lock of a dead
 * process is taken over. `now` is the instant to write into the lock.
 */
export async function takeLock(folder: string, now: Date = new Date()): Promise<Lock> {
  const file = join(folder, 'lock');
  const own: Holder = {
    pid: process.pid,
    started: startOf(process.pid) ?? '',
    host: hostname(),
    since: now.toISOString(),
  };
  const text = JSON.stringify(own);
  for (let tries = 0; tries < 20; tries++) {
    try {
      const handle = await open(file, 'wx', 0o600);
      try {
        await handle.writeFile(text);
        await handle.sync();
      } catch (error) {
        // An empty lock would be believed for a minute, and nobody holds it.
        await rm(file, { force: true }).catch(() => undefined);
        throw error;
      } finally {
        await handle.close();
      }
      if ((await readFile(file, 'utf8').catch(() => '')) === text) return hold(file, text);
    } catch (error) {
      if (errorCode(error) !== 'EEXIST') throw error;
    }
    const there = await readFile(file, 'utf8').catch(() => undefined);
    if (there === undefined) continue;
    const holder = readHolder(there);
    if (await isHeld(file, holder)) {
      if (holder)
        throw new KeepProblem('locked', { pid: holder.pid, host: holder.host, since: holder.since });
      await new Promise((resolve) => setTimeout(resolve, 100));
      continue;
    }
    await takeAway(file, there);
  }
  throw new KeepProblem('locked', { pid: 0, host: '', since: '' });
}

/** Removes the lock that was judged dead, and no other: one that came in between is put back. */
async function takeAway(file: string, judged: string): Promise<void> {
  const aside = `${file}.${process.pid}`;
  try {
    await rename(file, aside);
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return;
    throw error;
  }
  if ((await readFile(aside, 'utf8')) !== judged) await link(aside, file).catch(() => undefined);
  await rm(aside, { force: true });
}

function hold(file: string, text: string): Lock {
  const touch = setInterval(() => {
    const now = new Date();
    utimes(file, now, now).catch(() => undefined);
  }, touchEvery);
  touch.unref();
  return {
    async release() {
      clearInterval(touch);
      if ((await readFile(file, 'utf8').catch(() => '')) === text) await rm(file, { force: true });
    },
  };
}
