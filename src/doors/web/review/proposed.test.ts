// Why: a reviewer trusts the order and the one button that accepts many at once.
import { describe, expect, test } from 'vitest';
import type { Packet } from '../../../published/document.ts';
import type { Entry, Observation, Ruling } from '../../../said/entry.ts';
import { orderProposed, plainlySure, proposedOf } from './proposed.ts';

const heard = (id: string, start: number, more: Partial<Observation> = {}): Entry =>
  ({
    kind: 'observation',
    id,
    sense: 'condition',
    value: { is: 'state', state: 'good' },
    hedged: false,
    sure: 0.95,
    source: { from: 'speech', media: 'm', start, end: start + 1, words: 'x' },
    ...more,
  }) as Entry;
const disputed = (id: string): Packet =>
  ({ record: { known: [{ standing: 'conflict', sides: [{ evidence: [{ id }] }] }] } }) as unknown as Packet;
const ruled = (ruling: Ruling['ruling']): Ruling => ({ ruling }) as Ruling;

describe('what is proposed', () => {
  const entries = [
    heard('plain', 1),
    heard('doubted', 2, { hedged: true, sure: 0.7 }),
    heard('disputed', 3),
    heard('done', 4),
    heard('old', 5),
    heard('new', 6, { replaces: ['old'] }),
    heard('typed', 7, { source: { from: 'typed' } }),
  ];
  const all = proposedOf(entries, disputed('disputed'), new Map([['done', ruled('accept')]]));
  const ids = (of: readonly { of: Observation }[]) => of.map((p) => p.of.id);

  test('is what was spoken and not replaced, in the order it was said', () => {
    expect(ids(all)).toEqual(['plain', 'doubted', 'disputed', 'done', 'new']);
    expect(all.map((p) => p.state)).toEqual(['waits', 'waits', 'waits', 'accepted', 'accepted']);
  });
  test('comes with the contradicted first, then the doubtful, then the rest, and what is done last', () => {
    expect(ids(orderProposed(all, 'doubtful first'))).toEqual([
      'disputed',
      'doubted',
      'plain',
      'done',
      'new',
    ]);
    expect(ids(orderProposed(all, 'only what waits'))).toEqual(['plain', 'doubted', 'disputed']);
  });
  test('is accepted in one go only when nothing calls for a look', () => {
    expect(ids(all.filter(plainlySure))).toEqual(['plain']);
  });
});
