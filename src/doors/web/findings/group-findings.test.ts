// Why: every finding is on the sheet once, however it is grouped; a stop is never below a sound part.
import { expect, test } from 'vitest';
import type { Finding } from '../../../judged/finding.ts';
import { groupFindings, groupings } from './group-findings.ts';

const finding = (id: string, verdict: Finding['verdict'], part: string): Finding =>
  ({ id, verdict, part, weight: 'defect' }) as Finding;
const findings = [
  finding('a', 'sound', 'tire'),
  finding('b', 'not seen', 'odometer'),
  finding('c', 'stop', 'tire'),
  finding('d', 'watch', 'roof_membrane'),
  finding('e', 'repair', 'a part of no station'),
];

test.each(groupings)('%s: each once', (grouping) => {
  const shown = groupFindings(findings, grouping).flatMap((g) => g.findings.map((f) => f.id));
  expect(shown.toSorted()).toEqual(['a', 'b', 'c', 'd', 'e']);
});
test('worst first', () => {
  expect(groupFindings(findings, 'by verdict').map((g) => g.findings.map((f) => f.id))).toEqual([
    ['c', 'e'],
    ['d'],
    ['b'],
    ['a'],
  ]);
});
