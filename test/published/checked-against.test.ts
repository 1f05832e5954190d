// Why: a card that says who else worked it out must name a test that is there and asks that card; the others say why nobody did.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { figureCards } from '../../src/figured/index.ts';

const root = join(import.meta.dirname, '..', '..');
describe('who else gave the answer', () => {
  test.each(figureCards.map((c) => [c.id, c.checkedAgainst] as const))('%s', (id, says) => {
    const named = /test\/published\/[\w./-]+/.exec(says)?.[0];
    if (named === undefined) {
      expect(says).toMatch(/^nobody publishes/);
      return;
    }
    expect(existsSync(join(root, named)), `${named} is not there`).toBe(true);
    expect(readFileSync(join(root, named), 'utf8'), `${named} never asks ${id}`).toMatch(
      new RegExp(`${id}['/]|tire-age/read-code|turning-circle/geometry`),
    );
  });
});
