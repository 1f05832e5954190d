// Why: the batteries of short pieces hold what hearing has been taught; each states the least it must reach.
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readSaid, scoreBattery } from './said-score.ts';

const folder = new URL('../data/said/', import.meta.url);
const files = readdirSync(folder).filter((f) => f.endsWith('.said'));

describe('short pieces of talk', () => {
  test('there are some', () => expect(files.length).toBeGreaterThan(0));
  test.each(files)('%s reaches its floors', (file) => {
    const text = readSaid(new URL(file, folder));
    const floor = /^# floors: recall (\d+) precision (\d+)/m.exec(text);
    expect(floor, 'a battery begins with "# floors: recall N precision N"').not.toBeNull();
    const s = scoreBattery(text);
    expect(100 * s.recall).toBeGreaterThanOrEqual(Number(floor?.[1]));
    expect(100 * s.precision).toBeGreaterThanOrEqual(Number(floor?.[2]));
  });
});
