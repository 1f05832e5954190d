// Why: a reviewer trusts the order and the one button that accepts many at once.
import { describe, expect, test } from 'vitest';
import type { Packet } from '../../../published/document.ts';
import type { Entry, Observation, Ruling } from '../../../said/entry.ts';
import { orderProposed, plainlySure, proposedOf, together } from './proposed.ts';

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
const packetOf = (disputed: readonly string[], stop?: string): Packet =>
  ({
    record: {
      known: [{ standing: 'conflict', sides: disputed.map((id) => ({ evidence: [{ id }] })) }],
    },
    findings: stop ? [{ verdict: 'stop', fact: { evidence: [{ id: stop }] } }] : [],
  }) as unknown as Packet;
const ruled = (ruling: Ruling['ruling']): Ruling => ({ ruling }) as Ruling;
const ids = (of: readonly { of: Observation }[]) => of.map((p) => p.of.id);

describe('what is proposed', () => {
  const entries = [
    heard('plain', 1),
    heard('doubted', 20, { hedged: true, sure: 0.7 }),
    heard('disputed', 40),
    heard('done', 60),
    heard('old', 80),
    heard('new', 81, { replaces: ['old'] }),
    heard('hardly', 100, { sure: 0.65 }),
    heard('with hardly', 102),
    heard('typed', 107, { source: { from: 'typed' } }),
    heard('stops', 120),
  ];
  const all = proposedOf(
    entries,
    packetOf(['disputed', 'typed'], 'stops'),
    new Map([['done', ruled('accept')]]),
  );

  test('is what was spoken and not replaced, in the order it was said', () => {
    expect(ids(all)).toEqual([
      'plain',
      'doubted',
      'disputed',
      'done',
      'new',
      'hardly',
      'with hardly',
      'stops',
    ]);
    expect(all.filter((p) => p.state !== 'waits').map((p) => p.of.id)).toEqual(['done']);
  });
  test('comes with the contradicted and the corrected first, then the doubtful, then the rest, and what is done last', () => {
    expect(ids(orderProposed(all, 'doubtful first'))).toEqual([
      'disputed',
      'new',
      'doubted',
      'stops',
      'hardly',
      'with hardly',
      'plain',
      'done',
    ]);
    expect(ids(orderProposed(all, 'only what waits'))).not.toContain('done');
  });
  test('names what contradicts it and what it stands instead of', () => {
    expect(all.find((p) => p.of.id === 'disputed')?.against.map((o) => o.id)).toEqual(['typed']);
    expect(all.find((p) => p.of.id === 'new')).toMatchObject({
      calls: ['corrected'],
      instead: [{ id: 'old' }],
    });
  });
  test('is accepted in one go only when nothing calls for a look', () => {
    expect(ids(all.filter(plainlySure))).toEqual(['plain', 'with hardly']);
  });
  test('waits again when a ruling was opened, and the old comes back when what replaced it is rejected', () => {
    const again = proposedOf(
      entries,
      packetOf([]),
      new Map([
        ['done', ruled('open')],
        ['new', ruled('reject')],
      ]),
    );
    expect(again.find((p) => p.of.id === 'done')?.state).toBe('waits');
    expect(again.find((p) => p.of.id === 'new')?.state).toBe('rejected');
    expect(again.find((p) => p.of.id === 'old')?.state).toBe('waits');
  });
});

describe('a breath', () => {
  const groups = (entries: readonly Entry[]) =>
    together(proposedOf(entries, packetOf([]), new Map())).map((g) => ids(g));
  test('is what was said within a few seconds, and ends with what needs a look of its own', () => {
    expect(
      groups([
        heard('a', 0),
        heard('b', 3),
        heard('c', 7),
        heard('d', 11),
        heard('e', 12, { hedged: true }),
        heard('f', 13),
      ]),
    ).toEqual([['a', 'b', 'c'], ['d'], ['e'], ['f']]);
  });
  test('holds no more than can be seen in one look, and no two recordings', () => {
    expect(groups(Array.from({ length: 8 }, (_, i) => heard(`n${i}`, i / 10))).map((g) => g.length)).toEqual([
      6, 2,
    ]);
    const other = { from: 'speech' as const, media: 'other', start: 1, end: 2, words: 'x' };
    expect(groups([heard('a', 0), heard('z', 1, { source: other })])).toEqual([['a'], ['z']]);
  });
});
