// Why: the real app in a real browser: starts the built server on a free port with its own data, and the system's Chromium.
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const root = resolve(import.meta.dirname, '..');
const places = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** The day on which every journey happens. */
export const today = '2026-11-24';

/** Starts Chromium without a screen. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = places.find((p) => existsSync(p));
  if (!executablePath)
    throw new Error('There is no Chromium on this machine; npm test installs it when it may.');
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--autoplay-policy=no-user-gesture-required',
    ],
  });
}

const freePort = (): Promise<number> =>
  new Promise((done, refuse) => {
    const server = createServer();
    server.on('error', refuse);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });

export interface Served {
  readonly address: string;
  readonly data: string;
  /** Stops it as Ctrl+C would; `keep` leaves the data. */
  stop(keep?: boolean): Promise<void>;
}

/** Starts `walkwright serve` as built in dist/. `demo: false` begins with an empty yard. */
export async function startServer(
  options: { readonly demo?: boolean; readonly data?: string } = {},
): Promise<Served> {
  const data = options.data ?? mkdtempSync(join(tmpdir(), 'walkwright-journey-'));
  const port = await freePort();
  let said = '';
  const child: ChildProcess = spawn(process.execPath, [join(root, 'dist', 'walkwright.mjs'), 'serve'], {
    cwd: root,
    env: {
      ...process.env,
      PORT: String(port),
      WALKWRIGHT_DATA: data,
      WALKWRIGHT_TODAY: today,
      ...(options.demo === false ? { WALKWRIGHT_DEMO: 'none' } : {}),
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  child.stdout?.on('data', (d) => {
    said += d;
  });
  child.stderr?.on('data', (d) => {
    said += d;
  });
  const address = `http://127.0.0.1:${port}`;
  const until = Date.now() + 90_000;
  for (;;) {
    const answer = await fetch(`${address}/api/units`).catch(() => undefined);
    if (answer?.ok) break;
    if (child.exitCode !== null || Date.now() > until) throw new Error(`The server did not start:\n${said}`);
    await new Promise((r) => setTimeout(r, 100));
  }
  return {
    address,
    data,
    async stop(keep = false) {
      if (child.exitCode === null) {
        child.kill('SIGTERM');
        await new Promise((r) => child.once('exit', r));
      }
      if (!keep) rmSync(data, { recursive: true, force: true });
    },
  };
}
