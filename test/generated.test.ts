// Why: a generated page that no longer says what the code does is worse than none.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { generateDocs } from '../scripts/docs/generate.ts';

const pages = generateDocs();

describe.each(Object.keys(pages))('docs/generated/%s', (name) => {
  test('is up to date (otherwise: npm run docs)', () => {
    const written = readFileSync(new URL(`../docs/generated/${name}`, import.meta.url), 'utf8');
    expect(written === pages[name], `docs/generated/${name} is out of date: run npm run docs`).toBe(true);
  });

  test('says where it comes from and leaves nothing undefined', () => {
    expect(pages[name]).toContain('npm run docs');
    expect(pages[name]).not.toMatch(/undefined|\[object|NaN/);
  });
});
