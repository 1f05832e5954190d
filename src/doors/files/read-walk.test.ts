// Why: what a speaker corrects stays in the log, replaced; what he takes back is out by his own word; every line is kept.
import { expect, test } from 'vitest';
import { fold } from '../../known/fold.ts';
import type { Entry, EntryOf } from '../../said/entry.ts';
import { type About, makeEntries } from './make-entries.ts';
import { readWalk } from './read-walk.ts';
import type { WalkFile } from './walk-file.ts';

const file: WalkFile = {
  name: 'walk.vtt',
  size: 0,
  media: { id: '019abcde-0000-7000-8000-000000000001', sha256: '0'.repeat(64) },
  text: async () => '',
  async *bytes() {},
};
const about: About = {
  dealership: 'd',
  unit: '019abcde-0000-7000-8000-000000000003',
  walk: '019abcde-0000-7000-8000-000000000002',
  by: 'R. Example',
  device: 'x',
  at: '2026-11-20T10:00:00-06:00',
  seed: 's',
};
function read(...lines: readonly string[]): readonly Entry[] {
  const { entries, make } = makeEntries(about);
  const cues = lines.map((l, i) => `00:0${i}:10.000 --> 00:0${i}:20.000\n${l}\n`).join('\n');
  readWalk({ file, text: `WEBVTT\n\n${cues}`, about }, make, 'class-a-diesel');
  return entries;
}
const observed = (entries: readonly Entry[]): EntryOf<'observation'>[] =>
  entries.filter((e) => e.kind === 'observation');

test('a correction is another observation that replaces the first', () => {
  const entries = read(
    'The left front tire is at ninety-five psi. No, sorry, one hundred five psi on the left front tire.',
  );
  const pressures = observed(entries).filter((o) => o.aspect === 'pressure_cold');
  expect(pressures.map((o) => (o.value.is === 'quantity' ? o.value.value : undefined))).toEqual([95, 105]);
  expect(pressures[1]?.replaces).toEqual([pressures[0]?.id]);
  const known = fold(entries).known.filter((k) => k.aspect === 'pressure_cold');
  expect(known.map((k) => k.value)).toEqual([{ is: 'quantity', value: 105, unit: '[psi]' }]);
});

test("what is taken back with nothing in its place is out, by the speaker's own ruling", () => {
  const entries = read('The windshield has a crack. Take that back.');
  const cracked = observed(entries).find((o) => o.part === 'windshield');
  expect(entries.find((e) => e.kind === 'ruling')).toMatchObject({
    on: cracked?.id,
    ruling: 'reject',
    by: 'R. Example',
  });
  expect(fold(entries).known.filter((k) => k.part === 'windshield')).toEqual([]);
});

test('every observation says when it was said, with its exact words, and every line is kept', () => {
  const entries = read('The left front tire has nine thirty-seconds of tread.', 'Nothing of any part here.');
  const tread = observed(entries).find((o) => o.aspect === 'tread_mid');
  expect(tread?.source).toMatchObject({ from: 'speech', media: file.media.id });
  expect(tread?.at).toMatch(/^2026-11-20T10:00:1\d\.\d{3}-06:00$/);
  expect(entries.find((e) => e.kind === 'transcript')?.cues.map((c) => c.text)).toEqual([
    'The left front tire has nine thirty-seconds of tread.',
    'Nothing of any part here.',
  ]);
});
