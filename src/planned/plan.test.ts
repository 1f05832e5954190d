// Why: no finding may be lost on the way to the shop, no hour or cent invented, and no work put in the wrong order.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coach } from '../../test/sample-entries.ts';
import { aspectOf, partOf } from '../catalogue/index.ts';
import { isPlace } from '../catalogue/place.ts';
import type { State } from '../catalogue/state.ts';
import type { Finding } from '../judged/finding.ts';
import type { EntryOf, Value } from '../said/entry.ts';
import { matchDefect } from './match-defect.ts';
import { plan } from './plan.ts';
import { defectWork } from './table/index.ts';
import { workOrders } from './work-order.ts';

const says = coach();

interface Told {
  readonly place?: string;
  readonly words?: string;
  readonly state?: State;
  readonly verdict?: Finding['verdict'];
}

function finding(part: string, aspect: string, told: Told = {}): Finding {
  const value: Value = told.state ? { is: 'state', state: told.state } : { is: 'count', count: 1 };
  const spoken = says.spoken(1, part, aspect, value);
  const evidence = [
    told.words === undefined
      ? spoken
      : { ...spoken, source: { ...spoken.source, words: told.words } as typeof spoken.source },
  ];
  return {
    id: `${part}/${aspect}/${told.place ?? ''}`,
    rule: 'invented-rule',
    part,
    ...(told.place === undefined ? {} : { place: told.place }),
    aspect,
    verdict: told.verdict ?? 'repair',
    outcome: 'fails',
    weight: 'defect',
    asks: 'asks?',
    reason: `${part} ${aspect} is wrong.`,
    limits: [],
    cites: [],
    fact: { part, aspect, standing: 'known', value, sides: [{ value, evidence }], doubts: [], evidence },
    next: 'next',
    who: 'a technician',
    look: 'look',
    minutes: 1,
  };
}

const shop = (fields: Partial<EntryOf<'shop'>> = {}): EntryOf<'shop'> => ({ ...says.shop(9), ...fields });

describe('the tables', () => {
  test('ids are once, parts and aspects are of the catalogue, ranges run upward', () => {
    expect(new Set(defectWork.map((d) => d.id)).size).toBe(defectWork.length);
    for (const d of defectWork) {
      expect(partOf(d.part), d.id).toBeDefined();
      expect(
        d.hours[0] <= d.hours[1] && d.partsDollars[0] <= d.partsDollars[1] && d.leadDays[0] <= d.leadDays[1],
        d.id,
      ).toBe(true);
      expect(d.cues.length, d.id).toBeGreaterThan(0);
      for (const place of d.onlyAt ?? []) expect(isPlace(place), place).toBe(true);
      for (const key of d.means) {
        const [part, aspect] = key.split('/');
        expect(partOf(part!) && aspectOf(part!, aspect!), `${d.id} ${key}`).toBeDefined();
      }
    }
  });
  test('the order of work names defects of the list and never comes round to itself', () => {
    const ids = new Set(defectWork.map((d) => d.id));
    const next = new Map<string, string[]>();
    for (const o of workOrders) {
      for (const id of [o.first, ...o.next]) expect(ids.has(id), id).toBe(true);
      next.set(o.first, [...(next.get(o.first) ?? []), ...o.next]);
    }
    const visit = (id: string, path: readonly string[]): void => {
      expect(path, `${[...path, id].join(' > ')}`).not.toContain(id);
      for (const n of next.get(id) ?? []) visit(n, [...path, id]);
    };
    for (const id of next.keys()) visit(id, []);
  });
});

describe('which work a finding comes down to', () => {
  test.each(defectWork.flatMap((d) => d.cues.map((cue) => [d.id, cue, d] as const)))(
    '%s: "%s"',
    (id, cue, d) => {
      const place = d.onlyAt?.[0];
      const found = matchDefect(
        finding(d.part, 'nothing_of_the_kind', {
          words: `well, ${cue}, I would say`,
          ...(place ? { place } : {}),
        }),
      );
      // Two defects of one part may share a way of saying it; then it is one of the two.
      const may = defectWork.filter((o) => o.part === d.part && o.cues.includes(cue)).map((o) => o.id);
      expect(may).toContain(id);
      expect(may).toContain(found?.id);
    },
  );
  test('by the check that failed', () => {
    expect(matchDefect(finding('tire', 'tin'))?.id).toBe('d001');
    expect(matchDefect(finding('lp_system', 'leak'))?.id).toBe('d089');
    expect(matchDefect(finding('co_alarm', 'date'))?.id).toBe('d091');
  });
  test('by what was seen: a worn awning and a bent one are different work', () => {
    expect(matchDefect(finding('patio_awning', 'condition', { state: 'torn' }))?.id).toBe('d059');
    expect(matchDefect(finding('patio_awning', 'condition', { state: 'bent' }))?.id).toBe('d060');
  });
  test('low pressure is the inner dual’s defect at an inner dual only', () => {
    expect(matchDefect(finding('tire', 'pressure_cold', { place: 'left-rear-inner' }))?.id).toBe('d004');
    expect(matchDefect(finding('tire', 'pressure_cold', { place: 'left-front' }))?.id).not.toBe('d004');
  });
  test('none where nothing fits', () => {
    expect(matchDefect(finding('vin_plate', 'vin'))).toBeUndefined();
  });
});

describe('the plan', () => {
  test('one job for a defect, with all its places; tires are counted, their hours are for the set', () => {
    const [job, ...rest] = plan(
      ['left-front', 'right-front', 'left-front'].map((place) =>
        finding('tire', 'tin', { place, verdict: 'stop' }),
      ),
      undefined,
    );
    expect(rest).toEqual([]);
    expect(job).toMatchObject({
      id: 'd001',
      places: ['left-front', 'right-front'],
      hours: [2, 5],
      parts: [90_000, 160_000],
      policy: 'before sale',
      leadDays: [2, 7],
    });
    expect(job).not.toHaveProperty('cost');
  });
  test('cost is the shop’s rate for the skill, else its default, with supplies, in whole cents', () => {
    const tires = [finding('tire', 'tin', { place: 'left-front' })];
    expect(
      plan(tires, shop({ laborCentsPerHour: { default: 10_000, tires: 9000 }, suppliesPercent: 4 }))[0]!.cost,
    ).toEqual([65_520, 130_000]);
    expect(plan(tires, shop({ laborCentsPerHour: { default: 10_000 } }))[0]!.cost).toEqual([65_000, 130_000]);
    expect(plan(tires, shop({ laborCentsPerHour: { glass: 10_000 } }))[0]).not.toHaveProperty('cost');
  });
  test('what nobody has hours for is a job to look and quote, with no hours, price or wait', () => {
    const [job] = plan([finding('vin_plate', 'vin', { verdict: 'stop' })], shop());
    expect(job).toMatchObject({ id: 'look-vin_plate', what: 'Look at it and quote', policy: 'before sale' });
    for (const made of ['hours', 'parts', 'cost', 'leadDays']) expect(job).not.toHaveProperty(made);
  });
  test('a watch is optional, unless the habit is to disclose; a stop is before sale whatever the habit', () => {
    const policy = (part: string, aspect: string, verdict: Finding['verdict']) =>
      plan([finding(part, aspect, { verdict })], undefined)[0]!.policy;
    expect(policy('tire', 'tin', 'watch')).toBe('optional');
    expect(policy('dash_cracks', 'cracks', 'watch')).toBe('disclose');
    expect(policy('dash_cracks', 'cracks', 'repair')).toBe('disclose');
    expect(policy('dash_cracks', 'cracks', 'stop')).toBe('before sale');
  });
  test('after names only jobs that are there', () => {
    const leaf = finding('suspension_leaf', 'broken');
    const tires = finding('tire', 'tin');
    expect(plan([tires, leaf], undefined).find((j) => j.id === 'd001')!.after).toEqual(['d017']);
    expect(plan([tires], undefined)[0]!.after).toEqual([]);
  });
  test('every finding that asks for work is in exactly one job, and none other is; order in makes no difference to the jobs', () => {
    const any = fc.constantFrom(...defectWork).chain((d) =>
      fc.record({
        aspect: fc.constantFrom(...d.means, `${d.part}/condition`),
        place: fc.constantFrom(undefined, 'left-front', 'left-rear-inner'),
        verdict: fc.constantFrom<Finding['verdict'][]>('sound', 'watch', 'repair', 'stop', 'not seen'),
        state: fc.constantFrom<State[]>('worn', 'cracked', 'leaking'),
      }),
    );
    fc.assert(
      fc.property(fc.array(any, { maxLength: 25 }), (rows) => {
        const findings = rows.map((r, i): Finding => {
          const [part, aspect] = r.aspect.split('/');
          return {
            ...finding(part!, aspect!, {
              verdict: r.verdict,
              state: r.state,
              ...(r.place ? { place: r.place } : {}),
            }),
            id: `f${i}`,
          };
        });
        const jobs = plan(findings, shop());
        const asked = findings
          .filter((f) => ['watch', 'repair', 'stop'].includes(f.verdict))
          .map((f) => f.id);
        expect(jobs.flatMap((j) => j.findings).sort()).toEqual([...asked].sort());
        const ids = jobs.map((j) => j.id);
        expect(new Set(ids).size).toBe(ids.length);
        for (const j of jobs) {
          for (const a of j.after) expect(ids).toContain(a);
          if (j.cost) expect(j.cost.every((c) => Number.isInteger(c))).toBe(true);
        }
        const again = plan([...findings].reverse(), shop());
        expect(again.map((j) => [j.id, j.places, j.policy, j.cost])).toEqual(
          jobs.map((j) => [j.id, j.places, j.policy, j.cost]),
        );
      }),
      { seed: 20261129, numRuns: 150 },
    );
  });
});

describe('work asked for aloud', () => {
  test('the job of the fault says who asked, in whose words; other jobs do not', () => {
    const said = says.spoken(3, 'toilet', 'advice', { is: 'state', state: 'advised' });
    const wish = { ...said, source: { ...said.source, words: 'that is a seal kit' } as typeof said.source };
    const jobs = plan([finding('toilet', 'leak'), finding('windshield', 'damage')], undefined, [wish]);
    const asked = jobs.filter((j) => j.asked !== undefined);
    expect(asked.map((j) => j.part)).toEqual(['toilet']);
    expect(asked[0]?.asked).toEqual([{ by: 'somebody', words: 'that is a seal kit', observation: wish.id }]);
  });
});
