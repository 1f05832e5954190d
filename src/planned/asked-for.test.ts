// Why: a job asked for aloud must land on the fault it was said of, on no other, and on one only.
import { describe, expect, test } from 'vitest';
import { coach, idOf } from '../../test/sample-entries.ts';
import type { Finding } from '../judged/finding.ts';
import type { Observation } from '../said/entry.ts';
import { askedFor, wishesIn } from './asked-for.ts';

const says = coach();
const wish = (n: number, part: string, words: string, more: Partial<Observation> = {}): Observation => {
  const o = says.spoken(n, part, 'advice', { is: 'state', state: 'advised' });
  return { ...o, source: { ...o.source, words } as Observation['source'], ...more };
};
function finding(n: number, part: string, place?: string): Finding {
  const value = { is: 'state', state: 'cracked' } as const;
  const evidence = [says.spoken(n, part, 'damage', value)];
  return {
    id: `${part}/${place ?? ''}/${n}`,
    rule: 'invented-rule',
    part,
    ...(place === undefined ? {} : { place }),
    aspect: 'damage',
    verdict: 'repair',
    outcome: 'fails',
    weight: 'defect',
    asks: 'asks?',
    reason: 'It is cracked.',
    limits: [],
    cites: [],
    fact: {
      part,
      aspect: 'damage',
      standing: 'known',
      value,
      sides: [{ value, evidence }],
      doubts: [],
      evidence,
    },
    next: 'next',
    who: 'a technician',
    look: 'look',
    minutes: 1,
  };
}

describe('jobs asked for on the walk', () => {
  test('goes to the job of the fault just spoken of, with who and the words', () => {
    const groups = new Map([
      ['near', [finding(100, 'roof_sealant')]],
      ['far', [finding(20, 'roof_sealant')]],
    ]);
    const asked = askedFor(groups, [wish(104, 'roof_sealant', ' I would  reseal that ')]);
    expect([...asked]).toEqual([
      ['near', [{ by: 'somebody', words: 'I would reseal that', observation: idOf(104) }]],
    ]);
  });
  test('never to another part, another place, or long after', () => {
    const groups = new Map([['j', [finding(100, 'tire', 'left-front')]]]);
    expect(askedFor(groups, [wish(104, 'windshield', 'order one')]).size).toBe(0);
    expect(askedFor(groups, [wish(104, 'tire', 'replace it', { place: 'right-front' })]).size).toBe(0);
    expect(askedFor(groups, [wish(400, 'tire', 'replace it')]).size).toBe(0);
    expect(askedFor(groups, [wish(104, 'tire', 'replace it', { place: 'left-front' })]).size).toBe(1);
  });
  test('what somebody else is said to have asked is theirs', () => {
    const groups = new Map([['j', [finding(100, 'toilet')]]]);
    const asked = askedFor(groups, [wish(101, 'toilet', 'wants a seal kit', { saidBy: 'the owner' })]);
    expect(asked.get('j')?.[0]?.by).toBe('the owner');
  });
  test('only advice is a wish', () => {
    const all = [
      says.spoken(1, 'toilet', 'condition', { is: 'state', state: 'good' }),
      wish(2, 'toilet', 'fix it'),
    ];
    expect(wishesIn(all).map((o) => o.id)).toEqual([idOf(2)]);
  });
});
