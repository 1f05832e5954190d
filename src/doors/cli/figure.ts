// Why: any calculator can be asked by hand, and says what it needs, its formula and who published it.
import type { Figure, FigureCard } from '../../figured/figure.ts';
import { type ByHand, figureByHand, type HandProblem } from '../../figured/figure-by-hand.ts';
import { figureCards } from '../../figured/index.ts';
import { nearest } from '../files/nearest.ts';
import { sayCitation } from '../words/say-limit.ts';
import { BadInput, BadUsage, type Command } from './command.ts';
import { readArgs } from './read-args.ts';
import { dayAsked } from './read-walk-folder.ts';
import { table } from './table.ts';
import { valueJson } from './value-json.ts';

const cardJson = (c: FigureCard): Record<string, unknown> => ({
  name: c.id,
  asks: c.asks,
  gives: c.gives,
  formula: c.formula,
  neglects: c.neglects,
  needs: c.needs.map((n) => ({
    name: n.name,
    what: n.what,
    unit: n.unit ?? null,
    optional: n.optional === true || n.find !== undefined,
  })),
  sources: c.cites.map((s) => ({ title: s.source.title, clause: s.clause, standing: s.source.standing })),
  checked_against: c.checkedAgainst,
});

/** A worked figure as documented in docs/guide/json.md. */
const figureJson = (f: Figure): Record<string, unknown> => ({
  name: f.id,
  asks: f.card.asks,
  ...(f.result.is === 'worked'
    ? {
        ...valueJson(f.result.value),
        working: f.result.working,
        binds: f.result.binds ?? null,
        note: f.result.note ?? null,
      }
    : {}),
  inputs: f.inputs.map(({ need, given }) => ({
    name: need.name,
    ...valueJson(given.value),
    from: given.from,
  })),
  driven_by: f.drivenBy,
  formula: f.card.formula,
  neglects: f.card.neglects,
  sources: f.card.cites.map((s) => ({
    title: s.source.title,
    clause: s.clause,
    standing: s.source.standing,
  })),
});

const problemSays: Readonly<Record<HandProblem['code'], (expects: string) => string>> = {
  'unknown-input': (expects) => `is not an input of this figure; it has ${expects}`,
  'missing-input': (expects) => `is missing; give it in ${expects}`,
  'unknown-unit': (expects) => `has a unit that is not known; use ${expects}`,
  'wrong-dimension': (expects) => `has a unit that measures something else; use ${expects}`,
  'not-a-number': (expects) => `is not a number in ${expects}`,
  'not-a-word': () => 'must be a word, in quotes',
};

/** `--json` stands alone with --list and takes the inputs with a name: node's own reader cannot do both. */
function splitJson(argv: readonly string[]): {
  readonly rest: readonly string[];
  readonly json: true | string | undefined;
} {
  const at = argv.findIndex((a) => a === '--json' || a.startsWith('--json='));
  if (at < 0) return { rest: argv, json: undefined };
  const given = argv[at]!;
  if (given.startsWith('--json='))
    return { rest: argv.toSpliced(at, 1), json: given.slice('--json='.length) };
  const next = argv[at + 1];
  const isInputs = next?.trimStart().startsWith('{') === true;
  return { rest: argv.toSpliced(at, isInputs ? 2 : 1), json: isInputs ? next! : true };
}

export const figureCommand: Command = {
  name: 'figure',
  summary: 'the calculators, and any of them with numbers of your own',
  usage: "figure --list [--json] | figure NAME [--json '{...}'] [--on YYYY-MM-DD]",
  help: 'Lists the calculators, shows what one needs, or works one out.\n\n  --list          every calculator\n  --json          with --list: print JSON\n  --json \'{...}\'  inputs by name: 12.4, {"value": 12.4, "unit": "V", "plus_or_minus": 0.05}, or "a word"\n  --on DAY        as of this day (today)',
  async run(argv, io) {
    const { rest, json } = splitJson(argv);
    const isList = rest.includes('--list');
    const args = readArgs(rest, { list: 'flag', on: 'text' }, isList ? [] : ['NAME']);
    if (isList) {
      if (json !== undefined) io.out(`${JSON.stringify(figureCards.map(cardJson), null, 2)}\n`);
      else
        io.out(
          table(
            ['name', 'asks', 'needs'],
            figureCards.map((c) => [c.id, c.asks, c.needs.map((n) => n.name).join(', ')]),
            io.width,
          ),
        );
      return 0;
    }
    const name = args.positionals[0]!;
    const card = figureCards.find((c) => c.id === name);
    if (!card) {
      const near = nearest(
        name,
        figureCards.map((c) => c.id),
      );
      throw new BadUsage(
        `There is no figure "${name}". ${near ? `Perhaps ${near} is meant.` : 'figure --list names them all.'}`,
      );
    }
    if (json === undefined || json === true) {
      if (json) io.out(`${JSON.stringify(cardJson(card), null, 2)}\n`);
      else io.out(describe(card, io.width));
      return 0;
    }
    const worked = figureByHand(card, readInputs(json), dayAsked(args.text('on'), io));
    if ('problems' in worked) {
      for (const p of worked.problems)
        io.err(`figure ${name}: --json: "${p.name}" ${problemSays[p.code](p.expects)}.\n`);
      return 1;
    }
    if (worked.result.is === 'gap') {
      const why = worked.result.refused;
      throw new BadInput(
        `figure ${name}`,
        `It cannot be worked out: ${why ? `${why.refused.replaceAll('-', ' ')}${why.detail ? ` (${why.detail})` : ''}` : 'something is missing'}.`,
        'Check the inputs; figure NAME shows what it needs.',
      );
    }
    io.out(`${JSON.stringify(figureJson(worked), null, 2)}\n`);
    return 0;
  },
};

function readInputs(json: string): Readonly<Record<string, ByHand>> {
  let raw: unknown;
  try {
    raw = JSON.parse(json);
  } catch (error) {
    throw new BadInput(
      '--json',
      `This is not JSON: ${error instanceof Error ? error.message : ''}.`,
      'Write an object, {"name": 12.4}, in single quotes.',
    );
  }
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    throw new BadInput('--json', 'This is not an object.', 'Write {"name": 12.4}.');
  return raw as Record<string, ByHand>;
}

function describe(card: FigureCard, width: number): string {
  const needs = card.needs.map((n) => [
    n.name,
    n.what,
    n.unit ?? 'a word',
    n.optional || n.find ? 'may be left out' : '',
  ]);
  return `${card.asks}\n\n${table(['input', 'what it is', 'unit', ''], needs, width)}\nFormula   ${card.formula}\nSource    ${card.cites.map(sayCitation).join('\n          ')}\nLeft out  ${card.neglects}\n`;
}
