// Why: every published number with its standing, and every source with what must be known before leaning on it.
import type { FigureCard } from '../../src/figured/figure.ts';
import type { Rule } from '../../src/judged/rule.ts';
import type { Citation, Limit, Source, Standing } from '../../src/standards/standard.ts';
import { head, measure, page, row } from './page.ts';

const standings: readonly Standing[] = ['law', 'standard', 'maker', 'trade practice', 'house default'];

/** Every limit, by standing. */
export function limitsPage(limits: readonly Limit[]): string {
  const standingOf = (l: Limit): Standing => l.values[0].citations[0].source.standing;
  const body = standings.flatMap((standing) => {
    const here = limits.filter((l) => standingOf(l) === standing);
    if (here.length === 0) return [];
    const rows = here.flatMap((l) =>
      l.values.map((v) =>
        row(l.id, l.what, measure(v.value, l.unit), v.from, v.citations.map(citationText).join('; ')),
      ),
    );
    return [
      `## ${standing[0]!.toUpperCase()}${standing.slice(1)}`,
      '',
      ...head('id', 'what', 'value', 'from', 'who says so'),
      ...rows,
      '',
    ];
  });
  return page(
    'Limits',
    `${limits.length} numbers. What is law for commercial vehicles or makers is a benchmark for a private coach: see the scope of each source.`,
    body,
  );
}

/** Every source that a limit, a rule or a figure leans on. */
export function sourcesPage(
  sources: readonly Source[],
  limits: readonly Limit[],
  rules: readonly Rule[],
  figures: readonly FigureCard[],
): string {
  const cited = [
    ...limits.flatMap((l) => l.values.flatMap((v) => v.citations)),
    ...rules.flatMap((r) => r.steps.flatMap((s) => ('mustBe' in s ? s.cites : []))),
    ...figures.flatMap((f) => f.cites),
  ];
  const all = new Map([...sources, ...cited.map((c) => c.source)].map((s) => [s.id, s]));
  const body = standings.flatMap((standing) => {
    const here = [...all.values()]
      .filter((s) => s.standing === standing)
      .sort((a, b) => (a.id < b.id ? -1 : 1));
    return here.length === 0
      ? []
      : [`## ${standing[0]!.toUpperCase()}${standing.slice(1)}`, '', ...here.flatMap(sourceText)];
  });
  return page(
    'Sources',
    `${all.size} sources. Read the text in force before relying on any of it in law.`,
    body,
  );
}

const sourceText = (s: Source): readonly string[] => [
  `- **${s.title}** (${s.publisher}; ${s.edition})${s.address === undefined ? '' : s.address.startsWith('http') && !s.address.includes(' ') ? ` <${s.address}>` : ` ${s.address}`}`,
  `  ${s.scope}`,
];

const citationText = (c: Citation): string =>
  `${c.source.title}, ${c.clause}: ${c.says} (${c.read === 'from memory' || c.read === 'common practice' ? c.read : `read ${c.read}`})`;
