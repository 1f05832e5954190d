// Why: the findings of a walk, worst first, as a table or as JSON.
import type { Finding } from '../../judged/finding.ts';
import type { Verdict } from '../../judged/rule.ts';
import { sayLimit } from '../words/say-limit.ts';
import { sayFact, subjectTitle } from '../words/say-value.ts';
import { sayTally } from '../words/say-verdict.ts';
import type { Command } from './command.ts';
import { readArgs } from './read-args.ts';
import { complain, dayAsked, packetOf } from './read-walk-folder.ts';
import { table } from './table.ts';
import { evidenceJson, valueJson } from './value-json.ts';

export const worstFirst: readonly Verdict[] = ['stop', 'repair', 'watch', 'not seen', 'sound'];

/** Findings with the worst verdict first, otherwise in the order of the rules. */
export const sortFindings = (findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted((a, b) => worstFirst.indexOf(a.verdict) - worstFirst.indexOf(b.verdict));

/** A finding as documented in docs/guide/json.md. */
export const findingJson = (f: Finding): Record<string, unknown> => ({
  rule: f.rule,
  part: f.part,
  place: f.place ?? null,
  aspect: f.aspect,
  verdict: f.verdict,
  outcome: f.outcome,
  weight: f.weight,
  reason: f.reason,
  limit: f.limit
    ? {
        must: f.limit.must,
        value: f.limit.value,
        unit: f.limit.unit,
        source: f.limit.source,
        clause: f.limit.clause,
        standing: f.limit.standing,
      }
    : null,
  reading: f.fact ? valueJson(f.fact.value) : null,
  standing: f.fact?.standing ?? null,
  margin: f.margin ?? null,
  evidence: f.fact?.evidence.map(evidenceJson) ?? [],
  next: f.next,
  who: f.who,
  caution: f.caution ?? null,
});

export const judgeCommand: Command = {
  name: 'judge',
  summary: 'what is sound, worn, broken or dangerous, against which limit',
  usage: 'judge WALK-FOLDER [--on YYYY-MM-DD] [--json]',
  help: 'Judges every rule that applies to the unit and prints the findings, worst first.\n\n  --on DAY   judge as of this day (today)\n  --json     print a JSON array (docs/guide/json.md)',
  async run(argv, io) {
    const args = readArgs(argv, { on: 'text', json: 'flag' }, ['WALK-FOLDER']);
    const { walk, packet } = await packetOf(args.positionals[0]!, dayAsked(args.text('on'), io), io);
    complain(walk, io);
    const findings = sortFindings(packet.findings);
    if (args.has('json')) io.out(`${JSON.stringify(findings.map(findingJson), null, 2)}\n`);
    else {
      const rows = findings.map((f) => [
        f.verdict,
        subjectTitle(f),
        f.fact ? sayFact(f.fact) : '',
        f.limit ? sayLimit(f.limit) : '',
        f.reason,
      ]);
      io.out(table(['verdict', 'of', 'reading', 'limit', 'reason'], rows, io.width));
      io.out(`\n${sayTally(packet.report.tally)}\n`);
    }
    return 0;
  },
};
