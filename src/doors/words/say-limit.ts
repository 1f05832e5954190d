// Why: a limit without its author is an opinion; this words who says so, how binding it is, and when it was read.

import { plainDay } from '../../published/plain-day.ts';
import type { Citation, Standing } from '../../standards/standard.ts';
import { readDay } from '../../units/day.ts';

export { plainLimit as sayLimit } from '../../published/plain-limit.ts';

/** Headings under which sources are listed, most binding first. */
export const standingTitles: Readonly<Record<Standing, string>> = {
  law: 'Law',
  standard: 'Published standards',
  maker: 'Makers',
  'trade practice': 'Trade practice',
  'house default': 'House defaults',
};

/** "read 24 Nov 2026", "from memory, not looked up", "common practice, no publication". */
export function sayRead(read: Citation['read']): string {
  if (read === 'from memory') return 'from memory, not looked up';
  if (read === 'common practice') return 'common practice, no publication';
  const day = readDay(read);
  return day === undefined ? read : `read ${plainDay(day)}`;
}

/** "49 CFR Part 393, 393.75(c): at least 2/32 in (read 24 Nov 2026)". */
export function sayCitation({ source, clause, says, read }: Citation): string {
  const where = ['', 'no source', 'not known'].includes(clause) ? source.title : `${source.title}, ${clause}`;
  return `${where}: ${says.replace(/\.$/, '')} (${sayRead(read)})`;
}
