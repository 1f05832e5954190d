// Why: a number that is in no list is shown nowhere, and one without a citation is worth nothing.
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { day } from '../units/day.ts';
import { isUnit } from '../units/unit.ts';
import { limits } from './index.ts';
import { type Limit, limitOn } from './standard.ts';

const root = new URL('.', import.meta.url);
const files = readdirSync(root, { withFileTypes: true })
  .filter((d) => d.isDirectory())
  .flatMap((d) =>
    readdirSync(new URL(`${d.name}/`, root))
      .filter((f) => f.endsWith('.ts') && !f.endsWith('.test.ts'))
      .map((f) => `${d.name}/${f}`),
  );

const isLimit = (x: unknown): x is Limit =>
  typeof x === 'object' && x !== null && 'values' in x && 'unit' in x && 'what' in x;

test.each(files)('%s: every limit in it is in the list', async (file) => {
  const module: Record<string, unknown> = await import(new URL(file, root).href);
  const here = Object.values(module)
    .filter(isLimit)
    .map((l) => l.id);
  expect(limits.map((l) => l.id)).toEqual(expect.arrayContaining(here));
});

describe.each(limits.map((l) => [l.id, l] as const))('%s', (_, limit) => {
  test('has a unit, days in order, and a citation for each value', () => {
    expect(isUnit(limit.unit)).toBe(true);
    const days = limit.values.map((v) => v.from);
    expect(days).toEqual([...days].sort());
    for (const c of limit.values.flatMap((v) => v.citations)) {
      expect(c.says.length).toBeGreaterThan(0);
      // What was not read says so, and trade practice never poses as a publication.
      if (c.source.standing === 'trade practice' && c.source.id === 'trade-practice')
        expect(c.read).not.toMatch(/^\d/);
      if (c.source.edition === 'from memory') expect(c.read).toBe('from memory');
    }
  });
});

test('every id is there once', () => {
  const ids = limits.map((l) => l.id);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
});

test('the value in force is that of the last day passed', () => {
  const cites = limits[0]!.values[0].citations;
  const limit: Limit = {
    id: 'x',
    what: 'x',
    unit: 'V',
    values: [
      { from: day('2010-01-01'), value: 1, citations: cites },
      { from: day('2020-01-01'), value: 2, citations: cites },
    ],
  };
  expect(limitOn(limit, day('2000-01-01')).value).toBe(1);
  expect(limitOn(limit, day('2019-12-31')).value).toBe(1);
  expect(limitOn(limit, day('2020-01-01')).value).toBe(2);
});
