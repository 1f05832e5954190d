// Why: whatever the form lets through must fit the log, for every part and aspect there is; otherwise it is written and then refused.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { generalAspects } from '../../../catalogue/general-aspect.ts';
import { aspectOf, parts } from '../../../catalogue/index.ts';
import type { Aspect } from '../../../catalogue/part.ts';
import { places } from '../../../catalogue/place.ts';
import { stateWords } from '../../../catalogue/state.ts';
import { type Observation, readEntry } from '../../../said/entry.ts';
import { draftObservation } from './draft-observation.ts';
import { cellsOf, emptyCells, readCells, unitsFor } from './value-cells.ts';

const envelope = {
  v: 1,
  id: '0190d3f0-0000-7000-8000-000000000001',
  dealership: 'home-lot',
  unit: '0190d3f0-0000-7000-8000-000000000002',
  at: '2026-11-24T18:00:00.000Z',
  by: 'R. Ames',
  device: 'web',
};
const subjects = parts.flatMap((p) =>
  [...p.aspects, ...generalAspects].map((a) => ({ part: p.id, aspect: aspectOf(p.id, a.id) as Aspect })),
);
const typed = fc.oneof(
  fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((n) => n.toFixed(3)),
  fc.nat(500).map(String),
  fc.constantFrom(...stateWords),
  fc.string({ maxLength: 60 }),
  fc.constant('5 to 6'),
);
const cells = (aspect: Aspect) =>
  fc.record({
    value: typed,
    unit: fc.constantFrom('', ...unitsFor(aspect)),
    plusOrMinus: fc.constantFrom('', '0.5', '2'),
    of: fc.constantFrom('', '4', '900'),
    why: fc.constantFrom(undefined, '', 'the door is stuck'),
  });
const manner = fc.record({
  doubtful: fc.boolean(),
  saidBy: fc.constantFrom('', 'the seller'),
  note: fc.string({ maxLength: 80 }),
});

describe('an observation by hand', () => {
  test('fits the log, or says in a sentence why it cannot be read', () => {
    const written = fc.constantFrom(...subjects).chain((s) =>
      fc.record({
        subject: fc.constant(s),
        cells: cells(s.aspect),
        manner,
        place: fc.constantFrom('', ...Object.keys(places)),
      }),
    );
    let fitted = 0;
    fc.assert(
      fc.property(written, ({ subject, cells: c, manner: m, place }) => {
        const read = readCells(subject.aspect, c);
        if ('trouble' in read) {
          expect(read.trouble).toMatch(/[.!?]$/);
          return;
        }
        fitted += 1;
        const draft = draftObservation({
          ...subject,
          place,
          value: read.value,
          manner: m,
          replaces: undefined,
        });
        expect(readEntry({ ...envelope, ...draft })).toHaveProperty('entry');
        // What is shown for correcting reads back as the same value.
        const again = readCells(subject.aspect, cellsOf(read.value));
        expect(again).toEqual(read);
      }),
      { seed: 20261124, numRuns: 1500 },
    );
    expect(fitted).toBeGreaterThan(300);
  });

  test('that replaces a spoken one keeps the words and names what it replaces', () => {
    const heard = {
      id: '0190d3f0-0000-7000-8000-000000000009',
      source: {
        from: 'speech',
        media: '0190d3f0-0000-7000-8000-000000000003',
        start: 5,
        end: 7,
        words: 'two thirty-seconds',
      },
    } as Observation;
    const aspect = aspectOf('tire', 'crack') as Aspect;
    const read = readCells(aspect, { ...emptyCells, value: 'yes' });
    if ('trouble' in read) throw new Error(read.trouble);
    const draft = draftObservation({
      part: 'tire',
      place: '',
      aspect,
      value: read.value,
      manner: { doubtful: false, saidBy: '', note: '' },
      replaces: heard,
    });
    expect(draft).toMatchObject({
      source: heard.source,
      replaces: [heard.id],
      sense: 'defect',
      polarity: 'bad',
      sure: 0.95,
    });
  });

  test('nothing typed is not nought, and unknown needs its why', () => {
    const aspect = aspectOf('odometer', 'reading') as Aspect;
    expect(readCells(aspect, emptyCells)).toHaveProperty('trouble');
    expect(readCells(aspect, { ...emptyCells, why: ' ' })).toHaveProperty('trouble');
    expect(readCells(aspect, { ...emptyCells, value: '61,480' })).toEqual({
      value: { is: 'quantity', value: 61480, unit: '[mi_i]' },
    });
    expect(readCells(aspect, { ...emptyCells, value: '5 to 6', unit: 'km' })).toEqual({
      value: { is: 'quantity', value: 5, unit: 'km', upTo: 6 },
    });
  });
});
