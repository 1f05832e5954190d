// Why: a row lost in a table is a reading lost; lines must be those that a person sees in an editor.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTable } from './read-table.ts';

describe('reading a table', () => {
  test('names cells by column, in any order, with the line of each row', () => {
    const t = readTable('\ufeffB, A \r\n1,2\r\n\r\n"x\ny",3\r\n4,5\r\n', 'f.csv');
    expect(t.columns).toEqual(['b', 'a']);
    expect(t.rows.map((r) => [r.line, { ...r.cells }])).toEqual([
      [2, { b: '1', a: '2' }],
      [4, { b: 'x\ny', a: '3' }],
      [6, { b: '4', a: '5' }],
    ]);
    expect(t.faults).toEqual([]);
  });

  test.each([';', '\t', ','])('takes "%s" between cells', (d) => {
    expect(readTable(`a${d}b\n1${d}2`, 'f').rows[0]?.cells).toEqual(
      Object.assign(Object.create(null), { a: '1', b: '2' }),
    );
  });

  test('a quote that never closes costs its own row only', () => {
    const t = readTable('a,b\n1,2\n3,"four\n5,6\n7,8\n', 'f.csv');
    expect(t.rows.map((r) => r.cells.a)).toEqual(['1', '5', '7']);
    expect(t.rows.map((r) => r.line)).toEqual([2, 4, 5]);
    expect(t.faults).toEqual([{ file: 'f.csv', line: 3, code: 'csv-quote', raw: '3,"four' }]);
  });

  test('a row with more cells than columns is a fault, not a shifted reading', () => {
    const t = readTable('a,b\n1,2,3\n4,5\n', 'f.csv');
    expect(t.faults.map((f) => [f.line, f.code])).toEqual([[2, 'csv-cells']]);
    expect(t.rows.map((r) => r.line)).toEqual([3]);
  });

  test('a thousand quotes that never close end in time, with every word kept', () => {
    const t = readTable(`a,b\n${'"x,1\n'.repeat(1000)}`, 'f.csv');
    expect(
      t.faults
        .map((f) => f.raw)
        .join('\n')
        .match(/"x/g)?.length,
    ).toBe(1000);
  });

  test('a column called __proto__ is a column', () => {
    expect(readTable('__proto__,a\n1,2', 'f').rows[0]?.cells.a).toBe('2');
    expect(({} as Record<string, unknown>).a).toBeUndefined();
  });

  test('any cells come back as they were written (property)', () => {
    const cell = fc
      .string({ maxLength: 12 })
      .map((s) => s.replace(/\r/g, '').trim())
      .filter((s) => s !== '');
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 8 }), (rows) => {
        const text = `a,b\n${rows.map((r) => r.map((c) => `"${c.replaceAll('"', '""')}"`).join(',')).join('\n')}\n`;
        const t = readTable(text, 'f');
        expect(t.faults).toEqual([]);
        expect(t.rows.map((r) => [r.cells.a, r.cells.b])).toEqual(rows);
      }),
      { seed: 20261124, numRuns: 300 },
    );
  });
});
