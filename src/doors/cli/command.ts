// Why: the shape of a command of the terminal, and the two ways in which one may be refused.
import type { Io } from './io.ts';

export interface Command {
  readonly name: string;
  /** One line for the list of commands. */
  readonly summary: string;
  /** Printed for --help, without the name of the program. */
  readonly usage: string;
  readonly help: string;
  /** Returns the exit code: 0, or 1 when what was handed in was bad. Throws BadUsage and BadInput. */
  run(args: readonly string[], io: Io): Promise<number>;
}

/** The command line is wrong: exit code 2. */
export class BadUsage extends Error {
  override readonly name = 'BadUsage';
}

/** What was handed in is wrong: exit code 1. Says where, what, and what to do. */
export class BadInput extends Error {
  override readonly name = 'BadInput';
  readonly remedy: string;
  constructor(where: string, says: string, remedy: string) {
    super(where ? `${where}: ${says}` : says);
    this.remedy = remedy;
  }
}
