// Why: the terminal's door: finds the command, runs it, and turns every way of failing into a sentence and an exit code.
import { realpathSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import packageJson from '../../../package.json' with { type: 'json' };
import { nearest } from '../files/nearest.ts';
import { FileRefusal } from '../files/walk-file.ts';
import { exportCommand, importCommand } from './carry.ts';
import { BadInput, BadUsage, type Command } from './command.ts';
import { figureCommand } from './figure.ts';
import { hearCommand } from './hear.ts';
import { type Io, plain } from './io.ts';
import { judgeCommand } from './judge.ts';
import { packetCommand } from './packet.ts';
import { badFile } from './read-walk-folder.ts';
import { recordCommand } from './record.ts';
import { serveCommand, startCommand } from './serve.ts';

const commands: readonly Command[] = [
  packetCommand,
  hearCommand,
  recordCommand,
  judgeCommand,
  figureCommand,
  serveCommand,
  startCommand,
  exportCommand,
  importCommand,
];

const overview = (): string =>
  `Walkwright ${packageJson.version}: one walk round a used motorhome in; report, figures, work and listing out.\n\n` +
  `  walkwright COMMAND [arguments]      walkwright COMMAND --help\n\n${commands.map((c) => `  ${c.name.padEnd(8)} ${c.summary}`).join('\n')}\n\n` +
  'Exit codes: 0 done, 1 what was handed in is bad, 2 the command line is wrong.\n';

/** Runs one command line. Returns the exit code: 0, 1 bad input, 2 bad usage. */
export async function main(argv: readonly string[], io: Io): Promise<number> {
  const [name, ...rest] = argv;
  if (name === '--version' || name === '-V') {
    io.out(`${packageJson.version}\n`);
    return 0;
  }
  if (name === '--help' || name === '-h' || name === 'help') {
    io.out(overview());
    return 0;
  }
  const command = commands.find((c) => c.name === name);
  if (!command) {
    const near = nearest(
      name ?? '',
      commands.map((c) => c.name),
    );
    io.err(
      name === undefined
        ? overview()
        : `walkwright: there is no command "${plain(name)}". ${near ? `Perhaps ${near} is meant.` : 'walkwright --help lists them.'}\n`,
    );
    return 2;
  }
  if (rest.includes('--help') || rest.includes('-h')) {
    io.out(`walkwright ${command.usage}\n\n${command.help}\n`);
    return 0;
  }
  try {
    return await command.run(rest, io);
  } catch (error) {
    const said = error instanceof FileRefusal ? badFile(error) : error;
    if (said instanceof BadUsage) {
      io.err(`walkwright ${command.name}: ${plain(said.message)}\nUsage: walkwright ${command.usage}\n`);
      return 2;
    }
    if (said instanceof BadInput) {
      io.err(`walkwright ${command.name}: ${plain(said.message)}\n  ${plain(said.remedy)}\n`);
      return 1;
    }
    const file = fileTrouble(said);
    if (!file) throw said;
    io.err(`walkwright ${command.name}: ${plain(file)}\n`);
    return 1;
  }
}

/** What the system says of a file or a folder (no room, no right, not there), in words; undefined for anything else. */
function fileTrouble(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('syscall' in error) || !('code' in error)) return undefined;
  const [says, remedy] = troubles[String(error.code)] ?? [
    `It cannot be read or written (${error.code}).`,
    'Check the path, its rights and the disk.',
  ];
  // A write into an open file does not say which one.
  return `${'path' in error ? `${error.path}: ` : ''}${says}\n  ${remedy}`;
}

const troubles: Readonly<Record<string, readonly [says: string, remedy: string]>> = {
  ENOSPC: ['The disk is full.', 'Make room, then do it again. What was kept before is still there.'],
  EACCES: ['This account may not read or write here.', 'Take another folder, or change its rights.'],
  EPERM: ['This account may not read or write here.', 'Take another folder, or change its rights.'],
  EROFS: ['The disk may not be written to.', 'Take a folder on another disk.'],
  EEXIST: ['A file stands where a folder should be.', 'Take another name.'],
  ENOTDIR: ['A file stands where a folder should be.', 'Take another name.'],
  EISDIR: ['A folder stands where a file should be.', 'Take another name.'],
};

function processIo(): Io {
  const now = new Date();
  const local = `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
  // A reader that has had enough ("| head") is no error of ours.
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EPIPE') process.exit(0);
      throw error;
    });
  }
  return {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    outIsTerminal: process.stdout.isTTY === true,
    errIsTerminal: process.stderr.isTTY === true,
    width: Math.max(60, process.stdout.columns ?? (Number(process.env.COLUMNS) || 120)),
    env: process.env,
    today: process.env.WALKWRIGHT_TODAY || local,
  };
}

/** Runs this process's own command line. */
export async function run(): Promise<void> {
  process.exitCode = await main(process.argv.slice(2), processIo());
}

const isProgram =
  process.argv[1] !== undefined && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url);
if (isProgram) await run();
