// Why: a report is worth what its making was worth: who looked, when, with what, and what was done with the words.
import type { Packet } from '../../published/document.ts';
import { type Day, readDay } from '../../units/day.ts';
import { sayDay } from '../words/say-value.ts';

const days = (texts: readonly string[]): string =>
  texts
    .map((t) => readDay(t))
    .filter((d): d is Day => d !== undefined)
    .map(sayDay)
    .join(', ');
const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** " by R. Ames"; nothing where the one who walked gave no name. */
export function walkers(names: readonly string[]): string {
  const known = names.filter((n) => n !== 'somebody');
  return known.length === 0 ? '' : ` by ${known.join(', ')}`;
}

/** Sentences on who, when and how. */
export function methodLines(p: Packet): readonly string[] {
  const { record, report } = p;
  const standing = [...record.standing.values()];
  const from = (kind: string): number => standing.filter((o) => o.source.from === kind).length;
  const sources = [
    [from('speech'), 'from the recording'],
    [from('typed'), 'typed'],
    [from('photo'), 'from photos'],
    [from('instrument'), 'from instruments'],
    [from('document'), 'from papers'],
  ] as const;
  const cues = record.transcripts.reduce((n, t) => n + t.cues.length, 0);
  const lines = [
    report.walkedBy.length === 0
      ? 'Nobody has walked this unit yet.'
      : `Walked${walkers(report.walkedBy)} on ${days(report.walkedOn)}. Judged as of ${sayDay(p.on)}, with the limits in force on that day.`,
    `${count(standing.length, 'observation')} on record: ${
      sources
        .filter(([n]) => n > 0)
        .map(([n, words]) => `${n} ${words}`)
        .join(', ') || 'none'
    }. ${record.out.size > 0 ? `${count(record.out.size, 'observation')} rejected or corrected since; they stay in the log.` : 'None was rejected or corrected.'}`,
    'A reading is held against its limit together with its own plus-or-minus. One that is nearer the limit than that is told as not settled, never as passed. What nobody looked at is told as not seen.',
    'Limits out of law and standards are mostly written for other vehicles or other uses; they are used here as benchmarks, and the list of sources says whom each binds.',
    'This report says what was looked at, by whom, on which day and against which limit. It is not a promise that the unit can be driven or used without danger. Local codes come first, and licensed work belongs to licensed people.',
  ];
  if (cues > 0)
    lines.splice(
      2,
      0,
      `The words of ${count(record.transcripts.length, 'recording')} (${count(cues, 'line')}) are kept whole, also those that nothing was made of.`,
    );
  if (record.puzzles.length > 0)
    lines.splice(
      2,
      0,
      `${count(record.puzzles.length, 'line')} of the files handed in could not be read; they are kept as they came.`,
    );
  return lines;
}
