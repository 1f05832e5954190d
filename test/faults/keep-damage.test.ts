// Why: a journal that was cut or bent must keep all that is sound, name what is not, and go on being written.
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Journal } from '../../src/keep/journal/journal.ts';
import { idOf, madeEntries, madeEntry, seeded } from './keep-entries.ts';

const seed = 20_260_106;
let scratch: string;
let made = 0;

beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'walkwright-damage-'));
});
afterAll(() => rm(scratch, { recursive: true, force: true }));

const freshFolder = (): string => join(scratch, `journal-${++made}`);
async function ids(journal: Journal): Promise<string[]> {
  const all: string[] = [];
  for await (const line of journal.lines()) all.push(line.entry.id);
  return all;
}
async function written(count: number, segmentBytes?: number): Promise<string> {
  const folder = freshFolder();
  const journal = await Journal.open(folder, segmentBytes ? { segmentBytes } : {});
  for (let at = 0; at < count; at++) await journal.append([madeEntry(at)]);
  await journal.close();
  return folder;
}
const idsOf = (numbers: readonly number[]): string[] => numbers.map(idOf);
const upTo = (count: number): number[] => Array.from({ length: count }, (_, at) => at);

test('cut at every byte of the last three lines: what is before is kept, the cut is named, writing goes on', async () => {
  const whole = await readFile(join(await written(5), '000001.jsonl'));
  const ends = [...whole.entries()].flatMap(([at, byte]) => (byte === 10 ? [at + 1] : []));
  expect(ends).toHaveLength(5);
  const cutAt = async (length: number): Promise<void> => {
    const folder = freshFolder();
    await mkdir(folder);
    await writeFile(join(folder, '000001.jsonl'), whole.subarray(0, length));
    const journal = await Journal.open(folder);
    const complete = ends.filter((end) => end <= length).length;
    const cleanly = ends.includes(length);
    const lineFeedOnly = ends.includes(length + 1);
    const kept = lineFeedOnly ? complete + 1 : complete;
    expect(await ids(journal), `cut at ${length}`).toEqual(idsOf(upTo(kept)));
    const named = journal.damage.map(({ file, line, code }) => ({ file, line, code }));
    expect(named, `cut at ${length}`).toEqual(
      cleanly ? [] : [{ file: '000001.jsonl', line: complete + 1, code: 'cut-short' }],
    );
    const aside = (await readdir(folder)).filter((name) => name.endsWith('.damaged'));
    expect(aside).toHaveLength(cleanly || lineFeedOnly ? 0 : 1);
    if (aside[0]) {
      expect(
        (await readFile(join(folder, aside[0]))).equals(whole.subarray(ends[complete - 1]!, length)),
      ).toBe(true);
      expect(journal.damage[0]?.detail).toContain(aside[0]);
    }
    expect(await journal.append([madeEntry(90)])).toMatchObject([{ is: 'kept', position: kept + 1 }]);
    await journal.close();
    const again = await Journal.open(folder);
    expect(again.damage).toEqual([]);
    expect(await ids(again)).toEqual(idsOf([...upTo(kept), 90]));
    await again.close();
    await rm(folder, { recursive: true });
  };
  let next = ends[1]!;
  const cutOn = async (): Promise<void> => {
    while (next <= whole.length) await cutAt(next++);
  };
  await Promise.all(Array.from({ length: 8 }, cutOn));
});

test('300 bits flipped at seeded places, one at a time: every other entry is served and the damage is named', async () => {
  const source = await written(24, 4000);
  const segments = (await readdir(source)).sort();
  expect(segments.length).toBeGreaterThan(2);
  const dice = seeded(seed);
  for (let flip = 0; flip < 300; flip++) {
    const folder = freshFolder();
    await cp(source, folder, { recursive: true });
    const file = segments[Math.floor(dice() * segments.length)]!;
    const bytes = await readFile(join(folder, file));
    const at = Math.floor(dice() * bytes.length);
    const bit = Math.floor(dice() * 8);
    const said = `seed ${seed}, flip ${flip}: bit ${bit} of byte ${at} of ${file}`;
    const hit = bytes.subarray(0, at).filter((byte) => byte === 10).length;
    const wasLineFeed = bytes[at] === 10;
    bytes[at]! ^= 1 << bit;
    await writeFile(join(folder, file), bytes);

    let before = 0;
    for (const other of segments.slice(0, segments.indexOf(file))) {
      before += (await readFile(join(source, other))).filter((byte) => byte === 10).length;
    }
    const lines = (await readFile(join(source, file))).filter((byte) => byte === 10).length;
    const isEnd = wasLineFeed && hit === lines - 1;
    const bad = wasLineFeed && !isEnd ? [before + hit, before + hit + 1] : [before + hit];
    const journal = await Journal.open(folder);
    expect(await ids(journal), said).toEqual(idsOf(upTo(24).filter((n) => !bad.includes(n))));
    expect(journal.damage.length, said).toBeGreaterThan(0);
    expect(journal.damage[0], said).toMatchObject({ file, line: hit + 1 });
    expect(['checksum', 'not-json', 'cut-short']).toContain(journal.damage[0]?.code);
    const lost = bad.map((number) => madeEntry(number));
    expect((await journal.append([...lost, madeEntry(50)])).every((one) => one.is === 'kept')).toBe(true);
    await journal.close();
    const again = await Journal.open(folder);
    expect((await ids(again)).sort(), said).toEqual(idsOf([...upTo(24), 50]).sort());
    await again.close();
    await rm(folder, { recursive: true });
  }
});

describe('lines that are sound but do not belong', () => {
  async function bent(bend: (lines: string[]) => string[]): Promise<Journal> {
    const folder = await written(6);
    const file = join(folder, '000001.jsonl');
    const lines = (await readFile(file, 'utf8')).split('\n').slice(0, -1);
    await writeFile(
      file,
      bend(lines)
        .map((line) => `${line}\n`)
        .join(''),
    );
    return Journal.open(folder);
  }

  test('a line taken out is named; the others are served', async () => {
    const journal = await bent((lines) => lines.filter((_, at) => at !== 2));
    expect(journal.damage).toMatchObject([{ line: 3, code: 'out-of-order' }]);
    expect(await ids(journal)).toEqual(idsOf([0, 1, 3, 4, 5]));
    await journal.close();
  });

  test('a line that stands there twice is served once', async () => {
    const journal = await bent((lines) => [...lines.slice(0, 3), lines[1]!, ...lines.slice(3)]);
    expect(journal.damage).toMatchObject([{ line: 4, code: 'out-of-order' }]);
    expect(await ids(journal)).toEqual(idsOf(upTo(6)));
    await journal.close();
  });

  test('zeros after the last line, as a power cut can leave them, are set aside', async () => {
    const folder = await written(3);
    const file = join(folder, '000001.jsonl');
    await writeFile(file, Buffer.concat([await readFile(file), Buffer.alloc(4096)]));
    const journal = await Journal.open(folder);
    expect(journal.damage).toMatchObject([{ line: 4, code: 'cut-short' }]);
    expect(await ids(journal)).toEqual(idsOf(upTo(3)));
    await journal.append(madeEntries(3, 2));
    await journal.close();
    expect((await readFile(file)).includes(0)).toBe(false);
  });

  test('a segment that is missing is named; those after it are served', async () => {
    const folder = await written(24, 4000);
    const segments = (await readdir(folder)).sort();
    await rm(join(folder, segments[1]!));
    const journal = await Journal.open(folder);
    expect(journal.damage).toMatchObject([{ file: segments[2], line: 1, code: 'out-of-order' }]);
    const there = await ids(journal);
    expect(there[0]).toBe(idOf(0));
    expect(there.at(-1)).toBe(idOf(23));
    expect(await journal.append([madeEntry(23), madeEntry(24)])).toMatchObject([
      { is: 'already kept' },
      { position: 25 },
    ]);
    await journal.close();
  });
});
