// Why: each stage has its command, each command its help, its JSON as documented, and its exit code.
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { inside, root, tinyWalk, walkwright } from './terminal.ts';

describe('the program', () => {
  test('--version and --help', async () => {
    expect(await walkwright(['--version'])).toEqual({ code: 0, out: `${packageJson.version}\n`, err: '' });
    const help = await walkwright(['--help']);
    expect(help.code).toBe(0);
    for (const name of ['packet', 'hear', 'record', 'judge', 'figure', 'serve', 'export', 'import'])
      expect(help.out).toContain(`  ${name} `);
  });
  test.each(['packet', 'hear', 'record', 'judge', 'figure', 'serve', 'start', 'export', 'import'])(
    '%s --help',
    async (name) => {
      const help = await inside([name, '--help']);
      expect([help.code, help.err]).toEqual([0, '']);
      expect(help.out).toMatch(new RegExp(`^walkwright ${name} `));
    },
  );
  test.each([
    [[], 2, 'walkwright COMMAND'],
    [['pakcet'], 2, 'Perhaps packet is meant.'],
    [['figure'], 2, 'NAME is missing'],
    [['figure', 'tire-agee'], 2, 'Perhaps tire-age is meant.'],
    [['figure', 'tire-age', '--json', '{"code": '], 1, 'This is not JSON'],
    [['figure', 'tire-age', '--json', '{}'], 1, '"code" is missing'],
    [
      ['figure', 'engine-power', '--json', '{"torque": {"value": 1, "unit": "V"}, "speed": 1}'],
      1,
      '"torque" has a unit that measures something else',
    ],
    [
      ['figure', 'engine-power', '--json', '{"torque": 800, "speed": 1800, "colour": 1}'],
      1,
      '"colour" is not an input',
    ],
    [['hear', 'nowhere.vtt'], 1, 'nowhere.vtt: There is no such file.'],
    [['hear', 'package.json'], 1, 'no timed words'],
    [['hear', join(tinyWalk, 'walk.vtt'), '--kind', 'boat'], 2, '"boat" is none'],
    [['import', 'nowhere.jsonl'], 1, 'There is no such file.'],
    [['serve', '--port', 'http'], 2, '"http" is none'],
  ])('%j ends with %d', async (args, code, says) => {
    const ran = await inside(args);
    expect([ran.code, ran.out]).toEqual([code, '']);
    expect(ran.err).toContain(says);
  });
});

describe('the stages as tables', () => {
  test.each([
    [['hear', join(tinyWalk, 'walk.vtt')], /tread mid +9\/32 in/],
    [['record', tinyWalk], /certification label +gross vehicle weight rating +14,500 lb/],
    [['judge', tinyWalk], /^stop +Smoke alarm/m],
    [['figure', '--list'], /^tire-age +How old is this tire\?/m],
    [['figure', 'tire-age'], /Source +49 CFR 574\.5/],
  ])('%j', async (args, shows) => {
    const ran = await inside(args);
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(shows);
  });

  test('a broken cue is named by file and line, and the rest is heard', async () => {
    const box = await mkdtemp(join(tmpdir(), 'walkwright-hear-'));
    const file = join(box, 'walk.vtt');
    await writeFile(
      file,
      'WEBVTT\n\n00:01.000 --> 00:04.000\nThe windshield has a crack.\n\nbad --> worse\nwords\n',
    );
    const ran = await inside(['hear', file, '--json']);
    await rm(box, { recursive: true });
    expect(ran.code).toBe(0);
    expect(ran.err).toContain(`${file}:6: `);
    expect(JSON.parse(ran.out)).toHaveLength(1);
  });
});

/** A document's keys, deep: of a list, those of its items together. */
function shapeOf(value: unknown, path = ''): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((v) => shapeOf(v, `${path}[]`));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, v]) => [`${path}.${k}`, ...shapeOf(v, `${path}.${k}`)]);
}

describe('docs/guide/json.md', () => {
  const blocks = readFile(join(root, 'docs/guide/json.md'), 'utf8').then((text) =>
    [...text.matchAll(/```sh\nwalkwright ([^\n]+)\n```[\s\S]*?```json\n([\s\S]*?)```/g)].map((m) => ({
      args: [...m[1]!.matchAll(/'([^']*)'|(\S+)/g)].map((a) => a[1] ?? a[2]!),
      example: JSON.parse(m[2]!) as Record<string, unknown>,
    })),
  );
  test('has an example for each command with JSON', async () => {
    expect((await blocks).map((b) => b.args[0])).toEqual(['hear', 'record', 'judge', 'figure']);
  });
  test.each([0, 1, 2, 3])('example %d is what the command prints', async (i) => {
    const { args, example } = (await blocks)[i]!;
    const ran = await inside(args);
    expect(ran.code).toBe(0);
    const printed = JSON.parse(ran.out);
    const all: readonly Record<string, unknown>[] =
      args[0] === 'record' ? printed.known : Array.isArray(printed) ? printed : [printed];
    const found = all.find((one) => ['rule', 'part', 'aspect', 'name'].every((k) => one[k] === example[k]));
    expect(found, `${args.join(' ')} prints nothing like the example`).toBeDefined();
    expect(shapeOf(found)).toEqual(shapeOf(example));
    // Ids, seconds and wordings may change with the ear and the catalogue; what is said of the thing may not.
    for (const key of [
      'kind',
      'value',
      'unit',
      'plus_or_minus',
      'polarity',
      'hedged',
      'standing',
      'doubts',
      'verdict',
      'outcome',
      'weight',
      'limit',
      'reading',
      'inputs',
    ]) {
      expect(found?.[key], key).toEqual(example[key]);
    }
  });
  test('a record has the lists that are named', async () => {
    const { out } = await inside(['record', tinyWalk, '--json']);
    expect(Object.keys(JSON.parse(out))).toEqual(['unit', 'known', 'claims', 'coverage', 'puzzles']);
  });
  test('every figure is listed with what it rests on', async () => {
    const list = JSON.parse((await inside(['figure', '--list', '--json'])).out) as Record<string, unknown>[];
    expect(list.length).toBeGreaterThanOrEqual(6);
    for (const f of list)
      expect(Object.keys(f)).toEqual([
        'name',
        'asks',
        'gives',
        'formula',
        'neglects',
        'needs',
        'sources',
        'checked_against',
      ]);
  });
});
