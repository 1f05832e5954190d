// Why: the yard on this machine: opens what is kept, brings in the worked examples the first time, listens, and closes cleanly.
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createAdaptorServer } from '@hono/node-server';
import packageJson from '../../../package.json' with { type: 'json' };
import { flow } from '../../flow.ts';
import { type Keeper, openKeeper } from '../../keep/open-keeper.ts';
import { KeepProblem } from '../../keep/problem.ts';
import type { Packet } from '../../published/document.ts';
import { type Day, readDay } from '../../units/day.ts';
import { openWalk, unitOf } from '../files/open-walk.ts';
import { sayProblem } from '../words/say-problem.ts';
import { type App, makeApp } from './app.ts';

export interface ServeOptions {
  readonly port: number;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly say: (text: string) => void;
  readonly complain: (text: string) => void;
  readonly progress: (share: number, doing: string) => void;
  readonly progressEnd: () => void;
  readonly workerUrl?: URL;
  readonly data?: string;
  /** Shown the worked example's packet before the address is. */
  readonly onDemo?: (packet: Packet) => Promise<void>;
}

/** The project's own folder, from the sources and from the built program alike. */
function projectFolder(): string {
  let at = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(at, 'package.json')) && dirname(at) !== at) at = dirname(at);
  return at;
}

/** Serves until told to stop. Returns the exit code. */
export async function serve(options: ServeOptions): Promise<number> {
  const { port, env, say, complain, progress, progressEnd } = options;
  const folder = options.data ?? env.WALKWRIGHT_DATA ?? 'data';
  const dealership = env.WALKWRIGHT_DEALERSHIP ?? 'home-lot';
  const project = projectFolder();
  const refuse = (code: string, where: string): number => {
    const { says, remedy } = sayProblem(code);
    progressEnd();
    complain(`walkwright: ${where}: ${says}\n  ${remedy}\n`);
    return 1;
  };
  if (!/^[a-z0-9][a-z0-9_.-]{0,79}$/.test(dealership)) {
    complain('walkwright: WALKWRIGHT_DEALERSHIP must be a plain lower-case id.\n');
    return 2;
  }
  const fixedDay = env.WALKWRIGHT_TODAY ? readDay(env.WALKWRIGHT_TODAY) : undefined;
  if (env.WALKWRIGHT_TODAY && !fixedDay) {
    complain('walkwright: WALKWRIGHT_TODAY must be a day YYYY-MM-DD.\n');
    return 2;
  }

  // The port is taken first: a second start must fail at once, before anything is opened.
  let app: App | undefined;
  const server = createAdaptorServer({
    fetch: (request) =>
      app?.fetch(request) ?? new Response('Starting', { status: 503, headers: { 'retry-after': '1' } }),
  });
  server.listen(port, '127.0.0.1');
  try {
    await once(server, 'listening');
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    return refuse(
      code === 'EADDRINUSE' ? 'port-taken' : code === 'EACCES' ? 'port-not-allowed' : 'unexpected',
      `port ${port}`,
    );
  }
  let keeper: Keeper;
  try {
    keeper = await openKeeper({
      folder,
      progress: ({ done, of }) => progress(of > 0 ? done / of : 0, 'Building the index'),
      ...(env.DATABASE_URL ? { databaseUrl: env.DATABASE_URL } : {}),
      ...(options.workerUrl ? { workerUrl: options.workerUrl } : {}),
    });
  } catch (error) {
    server.close();
    if (error instanceof KeepProblem)
      return refuse(error.code, error.data.pid ? `${folder} (process ${error.data.pid})` : folder);
    throw error;
  }
  for (const d of keeper.damage)
    complain(`${d.file}:${d.line}: ${sayProblem(d.code).says} ${sayProblem(d.code).remedy}\n`);
  const stopped = untilStopped();
  const demo: Awaited<ReturnType<typeof loadDemo>> =
    env.WALKWRIGHT_DEMO === 'none'
      ? { problems: [] }
      : await loadDemo(join(project, 'demo', 'walks'), keeper, dealership, progress);
  progressEnd();
  for (const problem of demo.problems) complain(`${problem}\n`);
  const clock = (): Date => new Date();
  const web = join(project, 'dist', 'web');
  app = makeApp({
    keeper,
    clock,
    dealership,
    version: packageJson.version,
    complain: (error) =>
      complain(`walkwright: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`),
    ...(existsSync(web) ? { staticFolder: web } : {}),
    ...(fixedDay ? { today: () => fixedDay } : {}),
    ...(demo.unit === undefined ? {} : { demoUnit: demo.unit }),
  });
  if (options.onDemo && demo.unit !== undefined) {
    const entries = (await keeper.log.read({ dealership, unit: demo.unit })).map((k) => k.entry);
    await options.onDemo(flow(entries, fixedDay ?? localDay(clock())));
  }
  const address = `http://localhost:${(server.address() as AddressInfo).port}/`;
  say(
    `The yard is open at ${address}${existsSync(web) ? '' : ' (the app is not built: only the API is served; npm start builds it)'}\nCtrl+C closes it.\n`,
  );
  await stopped;
  await app.close();
  server.close();
  if ('closeAllConnections' in server) server.closeAllConnections();
  await keeper.close();
  say('Closed.\n');
  return 0;
}

const localDay = (now: Date): Day =>
  `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}` as Day;

/** Resolves on the first SIGINT or SIGTERM; a second one ends the process as usual. */
function untilStopped(): Promise<void> {
  return new Promise((resolve) => {
    const stop = (): void => {
      process.off('SIGINT', stop);
      process.off('SIGTERM', stop);
      resolve();
    };
    process.on('SIGINT', stop);
    process.on('SIGTERM', stop);
  });
}

/** Walks that came with the software go into the log once; a unit that is there already, put away or not, is left alone. */
async function loadDemo(
  folder: string,
  keeper: Keeper,
  dealership: string,
  progress: (share: number, doing: string) => void,
): Promise<{ readonly unit?: string; readonly problems: readonly string[] }> {
  const names = await readdir(folder, { withFileTypes: true }).then(
    (found) =>
      found
        .filter((f) => f.isDirectory())
        .map((f) => f.name)
        .sort(),
    () => [],
  );
  const there = new Map((await keeper.log.units(dealership)).map((u) => [u.unit, u.entries]));
  const problems: string[] = [];
  let fullest: { unit: string; entries: number } | undefined;
  for (const name of names) {
    if (!existsSync(join(folder, name, 'unit.json'))) continue;
    try {
      const { unit, files, entries } = await openDemo(join(folder, name), dealership, there, progress);
      for (const file of files)
        if (!(await keeper.media.has(file.media.sha256))) await keeper.media.put(file.bytes());
      if (entries.length > 0) await keeper.log.append(entries);
      const count = there.get(unit) ?? entries.length;
      if (!fullest || count > fullest.entries) fullest = { unit, entries: count };
    } catch (error) {
      problems.push(`demo/walks/${name}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return { problems, ...(fullest ? { unit: fullest.unit } : {}) };
}

async function openDemo(
  folder: string,
  dealership: string,
  there: ReadonlyMap<string, number>,
  progress: (share: number, doing: string) => void,
) {
  const unit = await unitOf(folder, dealership);
  if (there.has(unit)) return { unit, files: [], entries: [] };
  const walk = await openWalk(folder, { dealership, progress });
  return { unit, files: walk.files, entries: walk.entries };
}
