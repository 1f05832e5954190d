// Why: tests of the fold need many small entries; this makes them, of an invented unit, with ids that can be named by number.
import type { EntryOf, Observation, Ruling, Value } from '../src/said/entry.ts';
import { uuidV7 } from '../src/said/uuid.ts';
import type { Unit } from '../src/units/unit.ts';

const start = Date.UTC(2026, 0, 5, 12, 0, 0);

/** Milliseconds of the instant so many seconds after the samples begin. */
export const seconds = (s: number): number => start + s * 1000;

/** The id of the sample with that number. */
export const idOf = (n: number): string => uuidV7(start + n, [0, 0, 0, 0, 0, 0, 0, n >> 16, n >> 8, n]);

/** Makes entries of one invented coach. `n` names the entry, `at` is in seconds. */
export function coach() {
  const envelope = (n: number, at: number) => ({
    v: 1 as const,
    id: idOf(n),
    dealership: 'invented',
    unit: idOf(77_777),
    at: new Date(seconds(at)).toISOString(),
    by: 'somebody',
    device: 'test',
  });
  const typed = (n: number, part: string, aspect: string, value: Value, at = n): Observation => ({
    ...envelope(n, at),
    kind: 'observation',
    part,
    aspect,
    value,
    sense: value.is === 'unknown' ? 'unknown' : value.is === 'quantity' ? 'quantity' : 'condition',
    polarity: 'neutral',
    hedged: false,
    sure: 1,
    source: { from: 'typed' },
  });
  return {
    typed,
    reading: (n: number, part: string, aspect: string, value: number, unit: Unit, at = n): Observation =>
      typed(n, part, aspect, { is: 'quantity', value, unit }, at),
    spoken: (n: number, part: string, aspect: string, value: Value, at = n): Observation => ({
      ...typed(n, part, aspect, value, at),
      source: { from: 'speech', media: idOf(66_666), start: at, end: at + 2, words: 'as spoken' },
      sure: 0.8,
    }),
    ruling: (n: number, on: number, ruling: Ruling['ruling'], at = n): Ruling => ({
      ...envelope(n, at),
      kind: 'ruling',
      on: idOf(on),
      ruling,
    }),
    unit: (n: number, fields: Partial<EntryOf<'unit'>>, at = n): EntryOf<'unit'> => ({
      ...envelope(n, at),
      kind: 'unit',
      ...fields,
    }),
    walk: (n: number, at = n): EntryOf<'walk'> => ({
      ...envelope(n, at),
      kind: 'walk',
      walk: idOf(n),
      title: `walk ${n}`,
      began: new Date(seconds(at)).toISOString(),
    }),
    shop: (n: number, at = n): EntryOf<'shop'> => ({
      ...envelope(n, at),
      kind: 'shop',
      laborCentsPerHour: { default: 12_000 },
      hoursPerDay: 6,
    }),
  };
}
