// Why: law, standards, makers, trade practice and our own defaults bind differently, so a report lists them apart.
import type { Packet } from '../../published/document.ts';
import type { Citation, Standing } from '../../standards/standard.ts';
import { sayRead, standingTitles } from '../words/say-limit.ts';

export interface ListedSource {
  readonly title: string;
  readonly scope: string;
  readonly address: string;
  readonly says: readonly string[];
  /** How it was read, where that is the same for all it says; empty otherwise. */
  readonly read: string;
}

export interface SourceGroup {
  readonly standing: string;
  readonly sources: readonly ListedSource[];
}

function citationsOf(p: Packet): readonly Citation[] {
  return [
    // What nobody looked at was held against nothing: its limits would only hide those that count.
    ...p.findings
      .filter((f) => f.verdict !== 'not seen')
      .flatMap((f) => [...f.cites, ...f.limits.flatMap((l) => l.cites), ...(f.limit?.cites ?? [])]),
    ...p.figures
      .filter((f) => f.result.is === 'worked')
      .flatMap((f) => [...f.card.cites, ...f.inputs.flatMap((i) => i.given.cites ?? [])]),
  ];
}

/** What is cited of one source, each once, and how it was read. */
function saysOf(cites: readonly Citation[]): Pick<ListedSource, 'says' | 'read'> {
  const reads = new Set(cites.map((c) => sayRead(c.read)));
  const one = reads.size === 1;
  const words = cites.map((c) => {
    const clause = ['', 'no source', 'not known'].includes(c.clause) ? '' : `${c.clause}: `;
    return `${clause}${c.says.replace(/\.$/, '')}${one ? '' : ` (${sayRead(c.read)})`}`;
  });
  return { says: [...new Set(words)].sort(), read: one ? ([...reads][0] ?? '') : '' };
}

const order = Object.keys(standingTitles) as Standing[];

/** Everything cited by a finding that was answered or a figure that was worked out, once each, grouped by how binding it is. */
export function sourceList(p: Packet): readonly SourceGroup[] {
  const bySource = new Map<string, Citation[]>();
  for (const c of citationsOf(p)) bySource.set(c.source.id, [...(bySource.get(c.source.id) ?? []), c]);
  return order.flatMap((standing) => {
    const sources = [...bySource.values()]
      .flatMap((cites) =>
        cites[0]?.source.standing === standing ? [{ source: cites[0].source, cites }] : [],
      )
      .toSorted((a, b) => (a.source.title < b.source.title ? -1 : 1))
      .map(({ source, cites }) => ({
        title: [source.title, source.publisher, source.edition]
          // A dash stands for "has none".
          .filter((w, i, all) => w !== '' && w !== '-' && all.indexOf(w) === i)
          .join(', '),
        scope: source.scope,
        address: source.address ?? '',
        ...saysOf(cites),
      }));
    return sources.length === 0 ? [] : [{ standing: standingTitles[standing], sources }];
  });
}
