// Why: what it costs to work out a unit from its log, at a size no unit will reach, so that a slow fold is noticed.

import { parts } from '../src/catalogue/index.ts';
import { beginFold, fold, recordOf, take } from '../src/known/fold.ts';
import type { Entry, Observation } from '../src/said/entry.ts';
import { uuidV7 } from '../src/said/uuid.ts';
import type { Measured } from './main.ts';
import { showMs } from './median.ts';

const entries = 100_000;
/** Those of which something of their own can be said. */
const speakable = parts.filter((p) => p.aspects.length > 0);
const start = Date.UTC(2026, 0, 5);

/** Folds 100,000 entries of an invented unit, then takes one more in. */
export async function benchFold(): Promise<readonly Measured[]> {
  // Through JSON, as a log comes off the disk.
  const log = JSON.parse(JSON.stringify(Array.from({ length: entries }, (_, n) => entry(n)))) as Entry[];
  const whole = performance.now();
  const record = fold(log);
  const ms = performance.now() - whole;
  const state = beginFold();
  for (const e of log) take(state, e);
  recordOf(state);
  const one = performance.now();
  take(state, entry(entries + 1));
  recordOf(state);
  const more = performance.now() - one;
  return [
    {
      name: `fold ${entries.toLocaleString('en-US')} entries, ${record.known.length} things known`,
      measured: showMs(ms),
      instead: `folding again for each new entry; taking one more in: ${showMs(more)}`,
      ratio: `${(ms / more).toFixed(0)} times faster`,
    },
  ];
}

function entry(n: number): Entry {
  const id = (k: number) => uuidV7(start + k * 10, [0, 0, 0, 0, 0, 0, k >> 24, k >> 16, k >> 8, k]);
  const envelope = {
    v: 1 as const,
    id: id(n),
    dealership: 'invented',
    unit: id(0),
    at: new Date(start + n * 10).toISOString(),
    by: 'bench',
    device: 'bench',
  };
  if (n % 10 === 9)
    return { ...envelope, kind: 'ruling', on: id(n - 5), ruling: n % 30 === 9 ? 'reject' : 'accept' };
  const part = speakable[(n * 7) % speakable.length]!;
  const aspect = part.aspects[n % part.aspects.length]!;
  const place = part.places[n % Math.max(1, part.places.length)];
  const observation: Observation = {
    ...envelope,
    kind: 'observation',
    walk: id(1_000_000 + (n % 5)),
    part: part.id,
    aspect: aspect.id,
    value:
      aspect.kind === 'quantity' && aspect.unit !== undefined
        ? { is: 'quantity', value: n % 40 === 0 ? 70 : 50 + (n % 4) / 10, unit: aspect.unit }
        : { is: 'state', state: n % 3 === 0 ? 'fails' : 'works' },
    sense: 'condition',
    polarity: 'neutral',
    hedged: n % 7 === 0,
    sure: 0.8,
    source: { from: 'typed' },
    ...(place === undefined ? {} : { place }),
    ...(n % 50 === 0 && n > 100 ? { replaces: [id(n - 100)] } : {}),
  };
  return observation;
}
