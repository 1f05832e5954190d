// Why: findings are read either worst first or in the order of the walk.
import { partOf, stations } from '../../../catalogue/index.ts';
import type { Finding } from '../../../judged/finding.ts';
import type { Verdict } from '../../../judged/rule.ts';
import { byWorst } from '../../../published/fault.ts';

export const groupings = ['by verdict', 'by station'] as const;
export type Grouping = (typeof groupings)[number];

export interface Group {
  readonly head: string;
  readonly hint?: string;
  readonly findings: readonly Finding[];
}

const verdicts: readonly {
  readonly head: string;
  readonly hint?: string;
  readonly of: readonly Verdict[];
}[] = [
  { head: 'What must be settled first', of: ['stop', 'repair'] },
  { head: 'To keep an eye on', of: ['watch'] },
  {
    head: 'Not seen',
    hint: 'Nobody looked, or what was seen settles nothing. The buyer is told so.',
    of: ['not seen'],
  },
  { head: 'Sound', hint: 'Looked at on that day, and met what was asked.', of: ['sound'] },
];

/** Groups with something in them. Within the not seen, what takes the least time to look at comes first. */
export function groupFindings(findings: readonly Finding[], grouping: Grouping): readonly Group[] {
  const sorted = [...findings].sort(byWorst);
  const groups: readonly Group[] =
    grouping === 'by verdict'
      ? verdicts.map(({ of, ...g }) => ({ ...g, findings: sorted.filter((f) => of.includes(f.verdict)) }))
      : [
          ...stations.map((s) => ({
            head: s.name,
            findings: sorted.filter((f) => partOf(f.part)?.station === s.id),
          })),
          {
            head: 'Elsewhere',
            findings: sorted.filter((f) => !stations.some((s) => s.id === partOf(f.part)?.station)),
          },
        ];
  return groups.filter((g) => g.findings.length > 0);
}
