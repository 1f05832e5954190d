// Why: whoever copies an example out of docs/guide/walk-folder.md must find that every line of it is understood.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { understand } from '../../src/doors/files/understand.ts';
import { about, memoryFile } from '../faults/memory-file.ts';
import { root } from './terminal.ts';

const examples = readFile(join(root, 'docs/guide/walk-folder.md'), 'utf8').then((text) =>
  [
    ...text.matchAll(/^## (unit\.json|readings\.csv|shop\.json)$[\s\S]*?```(?:json|csv)\n([\s\S]*?)```/gm),
  ].map((m) => [m[1]!, m[2]!] as const),
);

test('the guide has an example of each file that people write by hand', async () => {
  expect((await examples).map(([name]) => name)).toEqual(['unit.json', 'readings.csv', 'shop.json']);
});

test('every line of the examples is understood', async () => {
  const files = (await examples).map(([name, content]) => memoryFile(name, content));
  const { entries, account } = await understand(files, about);
  expect(entries.filter((e) => e.kind === 'puzzle')).toEqual([]);
  expect(account.filter((a) => a.did !== 'missing').map((a) => [a.file, a.did])).toEqual([
    ['unit.json', 'understood'],
    ['readings.csv', 'understood'],
    ['shop.json', 'understood'],
  ]);
  expect(entries.filter((e) => e.kind === 'observation').length).toBe(5 + 5);
});

test('the columns named for the lists are those that are read', async () => {
  const guide = await readFile(join(root, 'docs/guide/walk-folder.md'), 'utf8');
  const columns = /`(ref,on,kind[^`]+)`/.exec(guide)![1]!;
  const cells = 'r1,2026-11-01,class-c,2018,24.5,30000,1,305,200,64900,60000,TX,120,fair';
  const { entries } = await understand([memoryFile('comps.csv', `${columns}\n${cells}\n`)], about);
  expect(entries.find((e) => e.kind === 'comparables')?.rows[0]).toEqual({
    ref: 'r1',
    on: '2026-11-01',
    vehicle: 'class-c',
    year: 2018,
    lengthFt: 24.5,
    miles: 30000,
    slides: 1,
    powerHp: 305,
    generatorHours: 200,
    askCents: 6_490_000,
    soldCents: 6_000_000,
    state: 'TX',
    milesAway: 120,
    condition: 'fair',
  });
});
