// Why: laws of the journal: what goes in comes out, whatever it is, however it is called, wherever the files break.
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { madeEntries, madeEntry } from '../../../test/faults/keep-entries.ts';
import type { Entry } from '../../said/entry.ts';
import { canonicalJson } from '../canonical.ts';
import { Journal } from './journal.ts';
import { origin, readLine, writeLine } from './line.ts';

let scratch: string;
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'walkwright-journal-'));
});
afterAll(() => rm(scratch, { recursive: true, force: true }));

async function allOf(journal: Journal, after?: number): Promise<Entry[]> {
  const all: Entry[] = [];
  for await (const line of journal.lines(after)) all.push(line.entry);
  return all;
}

test('round trip: any calls, any segment size, opened again at any time (seed 41)', async () => {
  const note = fc.string({ unit: 'binary', maxLength: 60 });
  const call = fc.record({
    notes: fc.array(note, { maxLength: 6 }),
    dealership: fc.constantFrom('yard-a', 'yard-b'),
    reopen: fc.boolean(),
  });
  await fc.assert(
    fc.asyncProperty(
      fc.array(call, { maxLength: 12 }),
      fc.integer({ min: 200, max: 5000 }),
      async (calls, segmentBytes) => {
        const folder = await mkdtemp(join(scratch, 'p-'));
        let journal = await Journal.open(folder, { segmentBytes });
        const model: Entry[] = [];
        const last = new Map<string, number>();
        for (const { notes, dealership, reopen } of calls) {
          const entries = notes.map((words, at) =>
            madeEntry(model.length + at, { dealership, source: { from: 'typed', note: words } }),
          );
          const answers = await journal.append(entries);
          for (const [at, answer] of answers.entries()) {
            const position = (last.get(dealership) ?? 0) + 1;
            last.set(dealership, position);
            expect(answer).toEqual({ is: 'kept', id: entries[at]?.id, position });
          }
          model.push(...entries);
          if (reopen) {
            await journal.close();
            journal = await Journal.open(folder, { segmentBytes });
            expect(journal.damage).toEqual([]);
          }
          expect(await allOf(journal)).toEqual(model);
          expect((await journal.append(entries)).every((answer) => answer.is === 'already kept')).toBe(true);
        }
        const from = Math.floor(model.length / 2);
        expect(await allOf(journal, from)).toEqual(model.slice(from));
        expect(journal.count).toBe(model.length);
        await journal.close();
      },
    ),
    { seed: 41, numRuns: 60 },
  );
});

test('canonical JSON does not depend on the order of keys, and tells different values apart (seed 42)', () => {
  const shuffled = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(shuffled);
    if (value === null || typeof value !== 'object') return value;
    return Object.fromEntries(
      Object.entries(value)
        .reverse()
        .map(([key, inner]) => [key, shuffled(inner)]),
    );
  };
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (a, b) => {
      expect(canonicalJson(shuffled(a))).toBe(canonicalJson(a));
      const same = canonicalJson(a) === canonicalJson(b);
      expect(same).toBe(
        canonicalJson(JSON.parse(JSON.stringify(a))) === canonicalJson(JSON.parse(JSON.stringify(b))),
      );
      expect(JSON.parse(canonicalJson(a))).toEqual(JSON.parse(JSON.stringify(a)));
    }),
    { seed: 42, numRuns: 500 },
  );
});

test('a line with any one byte changed is never read as sound (seed 43)', () => {
  const text = JSON.stringify(madeEntry(7));
  const bytes = Buffer.from(writeLine(7, 4, origin, text).line.slice(0, -1));
  expect(readLine(bytes)).toMatchObject({ sound: { n: 7, position: 4, after: origin, text } });
  fc.assert(
    fc.property(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), (at, change) => {
      const bent = Buffer.from(bytes);
      bent[at] = (bent[at] ?? 0) ^ change;
      expect(readLine(bent)).not.toHaveProperty('sound');
    }),
    { seed: 43, numRuns: 2000 },
  );
});

test('segments roll at the size, and a call larger than that is one segment', async () => {
  const folder = await mkdtemp(join(scratch, 's-'));
  const journal = await Journal.open(folder, { segmentBytes: 2000 });
  for (let at = 0; at < 12; at++) await journal.append([madeEntry(at)]);
  await journal.append(madeEntries(12, 30));
  await journal.append([madeEntry(42)]);
  expect((await readdir(folder)).length).toBeGreaterThan(4);
  expect(await allOf(journal)).toEqual(madeEntries(0, 43));
  for (const after of [0, 1, 5, 11, 12, 41, 42, 43])
    expect(await allOf(journal, after)).toEqual(madeEntries(after, 43 - after));
  expect(await journal.at(20)).toMatchObject({ lines: 20 });
  expect(await journal.at(44)).toBe(undefined);
  await journal.close();
});
