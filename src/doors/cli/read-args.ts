// Why: node's own reading of the command line, with its complaints in plain words.
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { BadUsage } from './command.ts';

/** Options of a command: name -> whether it takes a value. */
export type Options = Readonly<Record<string, 'flag' | 'text'>>;
export interface Args {
  readonly positionals: readonly string[];
  text(name: string): string | undefined;
  has(name: string): boolean;
}

/** Reads arguments; throws BadUsage on an unknown option, a missing value, or another number of positionals. */
export function readArgs(args: readonly string[], options: Options, positionals: readonly string[]): Args {
  const config: NonNullable<ParseArgsConfig['options']> = {};
  for (const [name, takes] of Object.entries(options))
    config[name] = { type: takes === 'flag' ? 'boolean' : 'string' };
  let read: ReturnType<typeof parseArgs>;
  try {
    read = parseArgs({ args: [...args], options: config, allowPositionals: true, strict: true });
  } catch (error) {
    throw new BadUsage(
      error instanceof Error ? (error.message.split('. To specify')[0] ?? '') : String(error),
    );
  }
  if (read.positionals.length < positionals.length)
    throw new BadUsage(`${positionals[read.positionals.length]} is missing.`);
  if (read.positionals.length > positionals.length)
    throw new BadUsage(`"${read.positionals[positionals.length]}" is one argument too many.`);
  const values = read.values as Record<string, string | boolean | undefined>;
  return {
    positionals: read.positionals,
    text: (name) => {
      const v = values[name];
      return typeof v === 'string' ? v : undefined;
    },
    has: (name) => values[name] === true,
  };
}
