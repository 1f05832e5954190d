// Why: a command writes through this, so that a test can read what a person would see.

export interface Io {
  /** Results: standard output. */
  out(text: string): void;
  /** Progress and errors: standard error. */
  err(text: string): void;
  readonly outIsTerminal: boolean;
  readonly errIsTerminal: boolean;
  readonly width: number;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** The calendar day where this machine stands, YYYY-MM-DD. */
  readonly today: string;
}

/** Text from files must not steer the terminal: control and direction characters are shown as "?". */
export const plain = (text: string): string =>
  text.replace(/(?![\t\n])[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, '?');

/** Colours only for a terminal that has not asked for none. */
export function colours(
  io: Io,
): (code: 'bold' | 'dim' | 'red' | 'orange' | 'blue' | 'green', text: string) => string {
  if (!io.outIsTerminal || io.env.NO_COLOR) return (_, text) => text;
  const codes = { bold: '1', dim: '2', red: '31', orange: '33', blue: '34', green: '32' };
  return (code, text) => `\u001b[${codes[code]}m${text}\u001b[0m`;
}

/** A progress line: rewritten in place on a terminal, one line a step elsewhere. */
export function progressLine(io: Io): { show(share: number, doing: string): void; end(): void } {
  let last = '';
  let wrote = false;
  return {
    show(share, doing) {
      const line = `${String(Math.round(share * 100)).padStart(3)} %  ${plain(doing)}`;
      if (doing === '' || doing === last) return;
      last = doing;
      if (io.errIsTerminal) io.err(`\r\u001b[K${line.slice(0, io.width - 1)}`);
      else io.err(`${line}\n`);
      wrote = true;
    },
    end() {
      if (io.errIsTerminal && wrote) io.err('\r\u001b[K');
    },
  };
}
