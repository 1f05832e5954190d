// Why: the yard in the browser, from the terminal: served here, or shown with the worked example first.
import { BadUsage, type Command } from './command.ts';
import { type Io, progressLine } from './io.ts';
import { readArgs } from './read-args.ts';
import { workerUrl } from './worker-url.ts';

const options =
  '  --port N        listen here (PORT, or 4173), on this machine only\n  --data FOLDER   where the log is kept (WALKWRIGHT_DATA, or data)\n\nWith DATABASE_URL set, the log is kept in that PostgreSQL. WALKWRIGHT_DEALERSHIP names the dealership (home-lot).';

async function serveWith(argv: readonly string[], io: Io, showsDemo: boolean): Promise<number> {
  const args = readArgs(argv, { port: 'text', data: 'text' }, []);
  const asked = args.text('port') ?? io.env.PORT;
  const port = asked === undefined || asked === '' ? 4173 : Number(asked);
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new BadUsage(`The port is a number up to 65535; "${asked}" is none.`);
  const { serve } = await import('../server/serve.ts');
  const progress = progressLine(io);
  const data = args.text('data');
  return serve({
    port,
    env: io.env,
    say: io.out,
    complain: io.err,
    progress: (share, doing) => progress.show(share, doing),
    progressEnd: progress.end,
    ...(workerUrl() ? { workerUrl: workerUrl()! } : {}),
    ...(data === undefined ? {} : { data }),
    ...(showsDemo
      ? {
          async onDemo(packet) {
            const { summary } = await import('./summary.ts');
            io.out(`${summary(packet, [], io)}\n`);
          },
        }
      : {}),
  });
}

export const serveCommand: Command = {
  name: 'serve',
  summary: 'the yard in the browser',
  usage: 'serve [--port N] [--data FOLDER]',
  help: `Opens the log and serves the app until stopped (Ctrl+C).\n\n${options}`,
  run: (argv, io) => serveWith(argv, io, false),
};

export const startCommand: Command = {
  name: 'start',
  summary: 'the summary of the worked example, then the yard in the browser',
  usage: 'start [--port N] [--data FOLDER]',
  help: `What npm start runs.\n\n${options}`,
  run: (argv, io) => serveWith(argv, io, true),
};
