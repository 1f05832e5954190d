// Why: what is known of a unit after a walk, each value with its evidence, as a table or as JSON.
import { partOf, stationOf } from '../../catalogue/index.ts';
import { fold } from '../../known/fold.ts';
import type { Known, UnitFacts, UnitRecord } from '../../known/record.ts';
import { sayDoubt, sayEvidence } from '../words/say-evidence.ts';
import { aspectName, sayValue, subjectTitle } from '../words/say-value.ts';
import type { Command } from './command.ts';
import { readArgs } from './read-args.ts';
import { complain, readWalkFolder } from './read-walk-folder.ts';
import { table } from './table.ts';
import { evidenceJson, valueJson } from './value-json.ts';

const knownJson = (k: Known): Record<string, unknown> => ({
  part: k.part,
  label: partOf(k.part)?.name ?? k.part,
  place: k.place ?? null,
  aspect: k.aspect,
  standing: k.standing,
  value: valueJson(k.value),
  doubts: k.doubts,
  sides: k.sides.map((s) => ({ value: valueJson(s.value), evidence: s.evidence.map((o) => o.id) })),
  evidence: k.evidence.map(evidenceJson),
});

const unitJson = (u: UnitFacts): Record<string, unknown> => ({
  id: u.id,
  kind: u.vehicle ?? null,
  stock: u.stock ?? null,
  name: u.name ?? null,
  maker: u.maker ?? null,
  model: u.model ?? null,
  year: u.year ?? null,
  arrived: u.arrived ?? null,
  consigned: u.consigned ?? null,
  asking: u.asking === undefined ? null : u.asking / 100,
  equipment: u.equipment,
  invented: u.invented,
  put_away: u.putAway,
});

/** A record as documented in docs/guide/json.md. */
export function recordJson(record: UnitRecord): Record<string, unknown> {
  return {
    unit: unitJson(record.unit),
    known: record.known.map(knownJson),
    claims: record.claims.map((o) => ({
      part: o.part,
      value: valueJson(o.value),
      evidence: evidenceJson(o),
    })),
    coverage: record.coverage.map((c) => ({
      station: c.station,
      expected: c.expected.length,
      seen: c.seen,
      unknown: c.unknown,
      not_seen: c.notSeen,
    })),
    puzzles: record.puzzles.map((p) => ({ file: p.file, line: p.line, code: p.code, raw: p.raw })),
  };
}

export const recordCommand: Command = {
  name: 'record',
  summary: 'what is known of the unit, each value with its evidence',
  usage: 'record WALK-FOLDER [--json]',
  help: 'Reads a walk folder and prints what is known of the unit: values, conflicts, unknowns, coverage.\n\n  --json     print JSON (docs/guide/json.md)',
  async run(argv, io) {
    const args = readArgs(argv, { json: 'flag' }, ['WALK-FOLDER']);
    const walk = await readWalkFolder(args.positionals[0]!, io);
    complain(walk, io);
    const record = fold(walk.entries);
    if (args.has('json')) {
      io.out(`${JSON.stringify(recordJson(record), null, 2)}\n`);
      return 0;
    }
    const rows = record.known.map((k) => [
      subjectTitle(k),
      aspectName(k.part, k.aspect),
      k.standing === 'conflict'
        ? k.sides.map((s) => sayValue(s.value, k.part, k.aspect)).join(' against ')
        : sayValue(k.value, k.part, k.aspect),
      k.standing === 'conflict' ? 'conflict' : k.doubts.map(sayDoubt).join('; '),
      k.evidence.map(sayEvidence).join('; '),
    ]);
    io.out(table(['part', 'aspect', 'value', 'doubt', 'evidence'], rows, io.width));
    io.out('\nLooked at, of the parts expected:\n');
    for (const c of record.coverage)
      io.out(
        `  ${(stationOf(c.station)?.name ?? c.station).padEnd(30)} ${c.seen.length} of ${c.expected.length}\n`,
      );
    return 0;
  },
};
