// Why: a generated page says so, and a table cell must not break its table.

import type { Unit } from '../../src/units/unit.ts';
import { unitFact } from '../../src/units/unit.ts';

/** A page with its title and the line that keeps people from editing it. */
export const page = (title: string, intro: string, body: readonly string[]): string =>
  `# ${title}\n\n<!-- Made by \`npm run docs\` from the code. Do not edit: a test refuses a page that is out of date. -->\n\n${intro}\n\n${body.join('\n').trimEnd()}\n`;

/** A row of a table. */
export const row = (...cells: readonly string[]): string =>
  `| ${cells.map((c) => c.replaceAll('|', '\\|').replaceAll('\n', ' ')).join(' | ')} |`;

/** The head of a table. */
export const head = (...cells: readonly string[]): readonly string[] => [
  row(...cells),
  `|${cells.map(() => '---|').join('')}`,
];

/** A number with the symbol of its unit. */
export const measure = (value: number, unit: Unit): string => `${value} ${unitFact(unit).symbol}`.trim();
