// Why: the hardest slowing must come out of the accelerometer's rows whatever way the phone was mounted.
import { describe, expect, test } from 'vitest';
import { readMotion } from './read-motion.ts';
import type { WalkFile } from './walk-file.ts';

const file: WalkFile = {
  name: 'motion.csv',
  size: 0,
  media: { id: '019abcde-0000-7000-8000-000000000001', sha256: '0'.repeat(64) },
  text: async () => '',
  bytes: async function* () {},
};
const about = {
  dealership: 'd',
  unit: 'u',
  walk: '019abcde-0000-7000-8000-000000000002',
  by: 'b',
  device: 'x',
  at: '2026-11-20T10:00:00Z',
  seed: 's',
};
const rows = (tilt: number): string =>
  [
    't,ax,ay,az',
    ...Array.from(
      { length: 200 },
      (_, i) => `${(i / 10).toFixed(1)},${((i >= 100 && i < 120 ? -3.5 : 0) + tilt).toFixed(3)},0,9.81`,
    ),
  ].join('\n');

describe('motion', () => {
  test.each([0, 0.8, -1.2])('a tilt of %s m/s2 is taken out', (tilt) => {
    const { drafts, faults, account } = readMotion({ file, text: rows(tilt), about });
    expect(faults).toEqual([]);
    expect(drafts[0]).toMatchObject({
      aspect: 'peak_deceleration',
      value: { value: 3.5, unit: 'm/s2', plusOrMinus: 0.34 },
    });
    expect(account[0]?.says).toContain('200 rows of motion kept at 10.0 Hz');
  });
  test('rows that are no numbers are named and cost nothing else', () => {
    const { drafts, faults } = readMotion({
      file,
      text: `${rows(0)}\n20.1,x,0,9\n20.2,,,\n5,0,0,9\n`,
      about,
    });
    expect(faults.map((f) => [f.code, f.line])).toEqual([
      ['motion-row', 202],
      ['motion-row', 203],
      ['motion-row', 204],
    ]);
    expect(drafts).toHaveLength(1);
  });
  test('without its columns nothing is guessed', () => {
    expect(readMotion({ file, text: 'time,x,y,z\n1,2,3,4', about })).toMatchObject({
      drafts: [],
      faults: [{ code: 'csv-columns', detail: 't, ax, ay, az' }],
    });
  });
});
