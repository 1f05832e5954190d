// Why: the whole log as one text file and back: backup, and the way from one keeper to another.

import { once } from 'node:events';
import { createReadStream, createWriteStream } from 'node:fs';
import { rename, stat } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { type Keeper, openKeeper } from '../../keep/open-keeper.ts';
import { KeepProblem } from '../../keep/problem.ts';
import { sayProblem } from '../words/say-problem.ts';
import { BadInput, BadUsage, type Command } from './command.ts';
import { type Io, progressLine } from './io.ts';
import { readArgs } from './read-args.ts';
import { workerUrl } from './worker-url.ts';

const where =
  '  --data FOLDER   where the log is kept (WALKWRIGHT_DATA, or data)\n\nWith DATABASE_URL set, the log is in that PostgreSQL.';

/** Damaged lines named one by one. */
const mostTold = 100;

async function withKeeper<T>(
  data: string | undefined,
  io: Io,
  work: (keeper: Keeper) => Promise<T>,
): Promise<T> {
  const folder = data ?? io.env.WALKWRIGHT_DATA ?? 'data';
  const url = io.env.DATABASE_URL;
  const keeper = await openKeeper({
    folder,
    ...(url ? { databaseUrl: url } : {}),
    ...(workerUrl() ? { workerUrl: workerUrl()! } : {}),
  }).catch((error: unknown) => {
    if (!(error instanceof KeepProblem)) throw error;
    const { says, remedy } = sayProblem(error.code);
    throw new BadInput(folder, says, remedy);
  });
  try {
    return await work(keeper);
  } finally {
    await keeper.close();
  }
}

export const exportCommand: Command = {
  name: 'export',
  summary: 'write the whole log to one file',
  usage: 'export --out FILE [--data FOLDER]',
  help: `Writes every entry as a journal line, in order. An unfinished file never stands under its own name.\n\n  --out FILE      where to write\n${where}`,
  async run(argv, io) {
    const args = readArgs(argv, { out: 'text', data: 'text' }, []);
    const out = args.text('out');
    if (!out) throw new BadUsage('--out is missing: name the file to write, such as log.jsonl.');
    if (
      await stat(out).then(
        (s) => !s.isFile(),
        () => false,
      )
    )
      throw new BadInput(out, 'This is not a file that can be written.', 'Name a file, such as log.jsonl.');
    return withKeeper(args.text('data'), io, async (keeper) => {
      const stream = createWriteStream(`${out}.part`, { flags: 'w', mode: 0o600 });
      const failed = once(stream, 'error').then(([error]) => {
        throw new BadInput(
          out,
          `It cannot be written (${(error as NodeJS.ErrnoException).code ?? 'error'}).`,
          'Check the folder and the room on the disk.',
        );
      });
      const written = (async () => {
        let lines = 0;
        for await (const line of keeper.log.export()) {
          lines++;
          if (!stream.write(line.endsWith('\n') ? line : `${line}\n`)) await once(stream, 'drain');
        }
        stream.end();
        await once(stream, 'close');
        await rename(`${out}.part`, out);
        io.out(`${lines} entries written to ${out}\n`);
      })();
      await Promise.race([written, failed]);
      return 0;
    });
  },
};

export const importCommand: Command = {
  name: 'import',
  summary: 'read a file written by export into the log',
  usage: 'import FILE [--data FOLDER]',
  help: `Keeps every sound line; one that is there already is harmless, one that is damaged is named.\n\n${where}`,
  async run(argv, io) {
    const args = readArgs(argv, { data: 'text' }, ['FILE']);
    const file = args.positionals[0]!;
    const found = await stat(file).catch(() => undefined);
    if (!found?.isFile())
      throw new BadInput(
        file,
        found ? 'This is not a file.' : 'There is no such file.',
        'Give a file that export wrote.',
      );
    const progress = progressLine(io);
    return withKeeper(args.text('data'), io, async (keeper) => {
      const lines = createInterface({ input: createReadStream(file), crlfDelay: Number.POSITIVE_INFINITY });
      const done = await keeper.log.import(lines, (n) => progress.show(0, `${n} lines`));
      progress.end();
      io.out(`${done.kept} entries kept, ${done.already} were there already\n`);
      for (const id of done.refused)
        io.err(`${file}: ${id}: ${sayProblem('id-taken').says} ${sayProblem('id-taken').remedy}\n`);
      if (done.kept + done.already + done.refused.length === 0 && done.damaged.length > 0)
        throw new BadInput(
          `${file}:${done.damaged[0]!.line}`,
          'No line of this file is a line of a log; nothing was kept.',
          'Give a file that export wrote.',
        );
      for (const d of done.damaged.slice(0, mostTold))
        io.err(`${file}:${d.line}: ${sayProblem(d.code).says} ${sayProblem(d.code).remedy} (${d.detail})\n`);
      if (done.damaged.length > mostTold)
        io.err(`${file}: ${done.damaged.length - mostTold} more lines are damaged.\n`);
      return done.refused.length + done.damaged.length > 0 ? 1 : 0;
    });
  },
};
