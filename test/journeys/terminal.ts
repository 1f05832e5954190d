// Why: journeys through the terminal run the program itself, as a person would.
import { type ChildProcess, spawn } from 'node:child_process';
import { join, resolve } from 'node:path';
import { main } from '../../src/doors/cli/main.ts';

export const root = resolve(import.meta.dirname, '../..');
export const tinyWalk = join(root, 'test/data/tiny-walk');
const program = ['--import', 'tsx', join(root, 'src/doors/cli/main.ts')];

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Starts the program; `cwd` is the project unless told otherwise. */
export function begin(
  args: readonly string[],
  options: { readonly env?: Record<string, string>; readonly cwd?: string } = {},
): ChildProcess {
  const { NO_COLOR: _, DATABASE_URL: __, ...env } = process.env;
  return spawn(process.execPath, [...program, ...args], {
    cwd: options.cwd ?? root,
    env: { ...env, WALKWRIGHT_TODAY: '2026-11-24', COLUMNS: '120', ...options.env },
  });
}

/** Waits for the program to end. */
export function ended(child: ChildProcess): Promise<Ran> {
  let out = '';
  let err = '';
  child.stdout?.setEncoding('utf8').on('data', (d: string) => {
    out += d;
  });
  child.stderr?.setEncoding('utf8').on('data', (d: string) => {
    err += d;
  });
  return new Promise((done) => child.on('close', (code) => done({ code, out, err })));
}

/** The same command line without a process of its own: for the many refusals, where only words and exit code matter. */
export async function inside(args: readonly string[], env: Record<string, string> = {}): Promise<Ran> {
  const ran = { out: '', err: '' };
  const code = await main(args, {
    out(text) {
      ran.out += text;
    },
    err(text) {
      ran.err += text;
    },
    outIsTerminal: false,
    errIsTerminal: false,
    width: 120,
    env,
    today: '2026-11-24',
  });
  return { code, ...ran };
}

export const walkwright = (
  args: readonly string[],
  options: Parameters<typeof begin>[1] = {},
): Promise<Ran> => ended(begin(args, options));
