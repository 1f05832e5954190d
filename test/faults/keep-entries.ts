// Why: invented entries for the tests of the keeper: the same number always gives the same entry.
import type { Entry, Observation } from '../../src/said/entry.ts';
import { uuidV7 } from '../../src/said/uuid.ts';

const began = Date.UTC(2026, 0, 5, 14, 0, 0);

/** The id of entry `number`, 0 to 16,777,215. */
export function idOf(number: number): string {
  return uuidV7(began + number * 1000, [
    0,
    0,
    0,
    0,
    0,
    0,
    0,
    (number >> 16) & 255,
    (number >> 8) & 255,
    number & 255,
  ]);
}

export function numberOf(id: string): number {
  return Number.parseInt(id.slice(-6), 16);
}

/** The id of an invented unit. */
export const unitId = (unit: number): string => idOf(15_000_000 + unit);

/** An observation of an invented unit. */
export function madeEntry(number: number, over: Partial<Observation> = {}): Observation {
  return {
    v: 1,
    id: idOf(number),
    dealership: 'invented-yard',
    unit: unitId(number % 3),
    at: new Date(began + number * 1000).toISOString(),
    by: 'An Invented Walker',
    device: 'test',
    kind: 'observation',
    part: 'battery',
    aspect: 'voltage',
    value: { is: 'quantity', value: 12 + (number % 10) / 10, unit: 'V', plusOrMinus: 0.1 },
    sense: 'quantity',
    polarity: 'neutral',
    hedged: false,
    sure: 1,
    source: {
      from: 'typed',
      note: `invented reading ${number}: “höher” \u0000 \n ${'x'.repeat(number % 57)}`,
    },
    ...over,
  };
}

export function madeEntries(from: number, count: number, over: Partial<Observation> = {}): Entry[] {
  return Array.from({ length: count }, (_, at) => madeEntry(from + at, over));
}

/** Numbers from 0 to 1 that depend on the seed alone (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}
