// Why: nothing found may be lost on the way to a buyer, and nothing may reach him that the record does not carry.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  factOf,
  findingOf,
  mediaId,
  quantityOf,
  spokenAt,
  stateOf,
  textOf,
  treadLimit,
  unpublishedOf,
} from '../../test/invented-unit.ts';
import { parts } from '../catalogue/index.ts';
import type { Finding } from '../judged/finding.ts';
import type { Outcome, Verdict, Weight } from '../judged/rule.ts';
import type { Doubt } from '../known/record.ts';
import type { Claim, Packet } from './document.ts';
import { publish } from './publish.ts';

const resolves = (c: Claim, p: Packet): boolean => {
  const findings = c.findings.every((id) => p.findings.some((f) => f.id === id));
  const any =
    c.facts.length +
    c.findings.length +
    c.figures.length +
    c.evidence.length +
    (c.paper?.length ?? 0) +
    (c.station === undefined ? 0 : 1);
  return findings && any > 0;
};

/** What must be true of every packet, whatever went in. */
function conserved(p: Packet): void {
  const placed = p.report.stations.flatMap((s) => s.findings.map((f) => f.id)).toSorted();
  expect(placed).toEqual(p.findings.map((f) => f.id).toSorted());
  const disclosed = p.listing.claims
    .filter((c) => c.section === 'disclosure')
    .flatMap((c) => c.findings)
    .toSorted();
  expect(disclosed).toEqual(
    p.findings
      .filter((f) => f.verdict !== 'sound' && f.verdict !== 'not seen')
      .map((f) => f.id)
      .toSorted(),
  );
  const open = p.findings.filter((f) => f.verdict === 'not seen').map((f) => f.id);
  const told = p.listing.claims
    .filter((c) => c.section === 'not checked')
    .flatMap((c) => c.findings)
    .filter((id) => open.includes(id));
  expect(told.toSorted()).toEqual(open.toSorted());
  for (const c of p.listing.claims) {
    expect(resolves(c, p), c.id).toBe(true);
    expect(c.published && c.standing !== 'contradicted', c.id).toBe(true);
    if (c.section === 'praise') expect(c.standing, c.id).toBe('backed');
    if (c.basis === 'guessed') expect(c.text).toMatch(/a guess|Read:|Noted:/);
    if (c.basis === 'told' && c.section !== 'disclosure' && c.section !== 'headline')
      expect(c.text).toMatch(/as said on the walk|as told by/i);
    expect(c.text).not.toMatch(/\bDOT\b|\bis safe\b|undefined|NaN|\[object/);
  }
  expect(new Set(p.claims.map((c) => c.id)).size).toBe(p.claims.length);
  expect(Object.values(p.report.tally).reduce((a, b) => a + b, 0)).toBe(p.findings.length);
}

describe('conservation', () => {
  const outcomes: readonly (readonly [Outcome, Verdict, Weight])[] = [
    ['fails', 'stop', 'danger'],
    ['fails', 'repair', 'unlawful'],
    ['fails', 'repair', 'defect'],
    ['fails', 'watch', 'wear'],
    ['meets', 'sound', 'defect'],
    ['cannot tell', 'not seen', 'danger'],
    ['cannot tell', 'stop', 'danger'],
    ['cannot tell', 'watch', 'defect'],
  ];
  const doubts: readonly (readonly Doubt[])[] = [
    [],
    ['hedged'],
    ['hearsay'],
    ['unsure'],
    ['not reviewed'],
    ['on paper only'],
  ];
  const one = fc.record({
    part: fc.integer({ min: 0, max: parts.length - 1 }),
    aspect: fc.integer({ min: 0, max: 5 }),
    place: fc.integer({ min: -1, max: 3 }),
    outcome: fc.constantFrom(...outcomes),
    doubt: fc.constantFrom(...doubts),
    value: fc.constantFrom(
      quantityOf(2, '[in_i]/32', 0.5),
      stateOf('leaking'),
      stateOf('yes'),
      textOf('1113'),
      { is: 'unknown', why: 'could not reach it' } as const,
    ),
    bare: fc.boolean(),
    told: fc.boolean(),
  });
  test('every finding is in the report once, every fault disclosed once, every open check told once, every sentence has evidence', () => {
    fc.assert(
      fc.property(
        fc.array(one, { maxLength: 12 }),
        fc.array(
          fc.constantFrom(
            'runs great',
            'tires look great',
            'like new',
            'love this one',
            'one owner',
            'no leaks',
          ),
          { maxLength: 3 },
        ),
        (made, praise) => {
          const used = new Set<string>();
          const built = made.flatMap((m, i) => {
            const part = parts[m.part]!;
            const aspect = part.aspects[m.aspect % Math.max(1, part.aspects.length)]?.id ?? 'condition';
            const place = part.places[m.place];
            const key = `${part.id}/${aspect}/${place}`;
            if (used.has(key)) return [];
            used.add(key);
            const o = spokenAt(i * 10, part.id, aspect, m.value, 'some words', {
              ...(place === undefined ? {} : { place }),
              ...(m.told ? { saidBy: 'the seller' } : {}),
            });
            const fact = factOf(o, m.doubt);
            const [outcome, verdict, weight] = m.outcome;
            const { place: _, ...plain } = findingOf({
              part: part.id,
              aspect,
              outcome,
              verdict,
              weight,
              reason: 'Because',
            });
            const finding: Finding = {
              ...plain,
              id: `rule-${i}`,
              ...(place === undefined ? {} : { place }),
              ...(m.bare && verdict === 'not seen' ? {} : { fact }),
            };
            return [{ fact: m.bare && verdict === 'not seen' ? undefined : fact, finding }];
          });
          const claims = praise.map((w, i) =>
            spokenAt(500 + i, 'coach', 'claim', textOf(w), w, { sense: 'claim' }),
          );
          conserved(
            publish(
              unpublishedOf({
                facts: built.flatMap((b) => b.fact ?? []),
                findings: built.map((b) => b.finding),
                record: { claims },
              }),
            ),
          );
        },
      ),
      { seed: 20261124, numRuns: 300 },
    );
  });
});

describe('a small unit', () => {
  const worn = spokenAt(
    582,
    'tire',
    'tread_mid',
    quantityOf(2, '[in_i]/32', 0.5),
    'left rear inner, two thirty-seconds at best',
    { place: 'left-rear-inner' },
  );
  const fact = factOf(worn);
  const length = factOf(
    spokenAt(12, 'coach', 'length', quantityOf(38.2, '[ft_i]'), 'thirty eight two, measured with the tape'),
  );
  const power = factOf(
    spokenAt(20, 'engine', 'power', quantityOf(400, '[HP]'), 'four hundred horse I think', { hedged: true }),
    ['hedged'],
  );
  const miles = factOf(
    spokenAt(25, 'odometer', 'reading', quantityOf(52_300, '[mi_i]'), 'fifty two three on the odometer'),
  );
  const owner = spokenAt(30, 'coach', 'claim', textOf('one owner'), 'seller says one owner', {
    sense: 'claim',
    saidBy: 'the seller',
  });
  const tires = spokenAt(40, 'tire', 'claim', textOf('great tires'), 'great tires', { sense: 'claim' });
  const sofa = spokenAt(50, 'dinette_sofa', 'claim', textOf('beautiful'), 'beautiful sofa', {
    sense: 'claim',
  });
  const finding = findingOf({ fact, limit: treadLimit, margin: 0 });
  const p = publish(
    unpublishedOf({
      facts: [length, power, miles, fact],
      findings: [finding],
      record: { claims: [owner, tires, sofa] },
    }),
  );

  test('the fault is told with its reading, its limit and whose limit it is', () => {
    const [group, text] = p.listing.claims.filter((c) => c.section === 'disclosure').map((c) => c.text);
    expect(group).toBe(
      'Stop. None of these had been put right or settled as of 24 Nov 2026; until they are, this is offered only as not fit to drive or use.',
    );
    expect(text).toBe(
      'Tire, left rear inner: the tread is worn to its limit. Read: 2/32 ± 0.5/32 in of tread in the middle, against at least 2/32 in (law, used here as a benchmark: 49 CFR Part 393, 393.75(c)).',
    );
  });
  test('a guess is said to be one and stays out of the headline and of what machines read', () => {
    expect(p.listing.claims.find((c) => c.id.includes('engine/power'))?.text).toBe(
      'Engine power: perhaps 400 hp; a guess, not measured.',
    );
    expect(p.listing.claims[0]?.text).not.toMatch(/400/);
    expect(JSON.stringify(p.listing.jsonLd)).not.toMatch(/enginePower/);
  });
  test('machines are told the miles in statute miles', () => {
    expect(p.listing.jsonLd.mileageFromOdometer).toEqual({
      '@type': 'QuantitativeValue',
      value: 52_300,
      unitCode: 'SMI',
    });
  });
  test('praise: contradicted by a fault, unbacked, told', () => {
    const of = (id: string) => p.claims.find((c) => c.id === `praise/${id}`);
    expect(of(tires.id)).toMatchObject({
      standing: 'contradicted',
      published: false,
      findings: [finding.id],
    });
    expect(of(sofa.id)).toMatchObject({ standing: 'unbacked', published: false });
    expect(of(owner.id)).toMatchObject({
      standing: 'backed',
      basis: 'told',
      published: true,
      text: 'As told by the seller: one owner. We have no paper for it.',
    });
    expect(p.listing.claims.map((c) => c.text).join(' ')).not.toMatch(/great tires|beautiful/i);
  });
  test('a sentence about a part with a fault points at the fault', () => {
    expect(p.listing.claims.find((c) => c.id.startsWith('chassis/tire/tread_mid'))?.text).toMatch(
      /See what is wrong: left rear inner tire\.$/,
    );
  });
  test('what a buyer must be told and nobody recorded is said to be unknown', () => {
    expect(p.listing.claims.find((c) => c.id === 'not-checked/silent')?.text).toMatch(
      /^Unknown, nobody recorded it: .*; VIN; title in hand;/,
    );
  });
  test('backed praise is printed as its readings, not as praise', () => {
    const drop = factOf(
      spokenAt(60, 'ac_run', 'drop_F', quantityOf(20, '[degF]{difference}'), 'twenty degree drop', {
        place: 'front',
      }),
    );
    const cold = spokenAt(62, 'ac_run', 'claim', textOf('blows ice cold'), 'blows ice cold', {
      sense: 'claim',
    });
    const claim = publish(unpublishedOf({ facts: [drop], record: { claims: [cold] } })).claims.find(
      (c) => c.section === 'praise',
    );
    expect(claim).toMatchObject({ standing: 'backed', published: true, basis: 'measured' });
    expect(claim?.text).toMatch(/^Air conditioner, front: drop 20 °F/);
    expect(claim?.text).not.toMatch(/ice/);
  });
  test('chapters follow one another, cover the recording and name what was found', () => {
    expect(p.chapters[0]?.start).toBe(0);
    expect(p.chapters.every((c) => c.media === mediaId)).toBe(true);
    expect(p.chapters.map((c) => c.title).join()).toMatch(
      /left rear inner tire: 2\/32 ± 0\.5\/32 in of tread/,
    );
  });
});

describe('told once', () => {
  const sides = ['left-front', 'right-front', 'left-rear-outer', 'right-rear-outer'] as const;
  const old = sides.map((place, i) => {
    const fact = factOf(spokenAt(10 * i, 'tire', 'age', quantityOf(7.51 + i / 20, 'a'), 'old', { place }));
    return findingOf({
      rule: 'tire-age',
      part: 'tire',
      place,
      fact,
      verdict: 'repair',
      weight: 'defect',
      reason: 'Old enough to plan a set.',
      limit: { ...treadLimit, must: 'at most', value: 7, unit: 'a', standing: 'trade practice' },
    });
  });
  const seen = (state: 'missing' | 'surging' | 'torn', part: string, hedged = false) => {
    const fact = factOf(
      spokenAt(
        90,
        part,
        'operates',
        stateOf(state),
        'it sort of tore there,',
        hedged ? { hedged: true } : {},
      ),
      hedged ? ['hedged'] : [],
    );
    const { place: _, ...plain } = findingOf({
      rule: `seen-operates-${state}`,
      part,
      aspect: 'operates',
      fact,
      verdict: 'watch',
      weight: 'wear',
      outcome: hedged ? 'cannot tell' : 'fails',
      reason: `Seen: operates ${state}.`,
    });
    return { ...plain, id: `seen-operates-${state}/${part}/` };
  };
  const p = publish(
    unpublishedOf({
      facts: old.flatMap((f) => f.fact ?? []),
      findings: [
        ...old,
        seen('surging', 'generator'),
        seen('missing', 'generator'),
        seen('torn', 'slide', true),
      ],
    }),
  );
  const told = p.listing.claims.filter((c) => c.section === 'disclosure').map((c) => c.text);

  test('the same fault at four places is one sentence with the range of its readings', () =>
    expect(told.filter((t) => t.startsWith('Tire'))).toEqual([
      'Tires, 4 places (left front, left rear outer, right front, right rear outer): old enough to plan a set. ' +
        'Read: 7.5 to 7.7 years old, against at most 7 years (trade practice).',
    ]));
  test('what was only seen of one part is one sentence, in a person’s words', () =>
    expect(told).toContain('Generator: missing; surging as it runs.'));
  test('a maybe is a guess', () =>
    expect(told).toContain(
      'Slide-out: perhaps torn, a guess until somebody looks again. “it sort of tore there”',
    ));
  test('what was done about them is said once', () =>
    expect(told.join(' ').match(/as of 24 Nov 2026/g)?.length).toBe(1));
  test('the count of faults stands at the head', () =>
    expect(p.listing.claims.find((c) => c.id === 'headline/faults')?.text).toBe(
      'Faults found: 4 to repair, 3 to watch. All of them are told below.',
    ));
});

test('readings that say the same name their places; nobody says "all" of what may not have been read', () => {
  const tread = (place: string) =>
    factOf(spokenAt(1, 'tire', 'tread_mid', quantityOf(8, '[in_i]/32'), 'eight', { place }));
  const p = publish(unpublishedOf({ facts: [tread('left-front'), tread('right-front')] }));
  expect(p.listing.claims.find((c) => c.id.startsWith('chassis/tire'))?.text).toBe(
    'Tread in the middle: 8/32 in (left front, right front) (measured).',
  );
});

describe('what was only said', () => {
  test('a kind and a name out of speech say so; one from paper does not', () => {
    const { vehicle: _v, name: _n, maker: _m, model: _d, year: _y, ...none } = unpublishedOf().record.unit;
    const maker = factOf(spokenAt(1, 'coach', 'maker', textOf('Tessaway'), 'a Tessaway'));
    const u = unpublishedOf({ facts: [maker] });
    const said = publish({
      ...u,
      record: { ...u.record, unit: { ...none, vehicle: 'class-a-gas', kindFrom: 'said' } },
    });
    expect(said.listing.claims[0]?.text).toMatch(/class A gas, as said/);
    expect(said.listing.claims.find((c) => c.id === 'headline/name')?.text).toMatch(/as said on the walk/);
    const paper = publish(u);
    expect(paper.listing.claims[0]?.text).not.toMatch(/as said/);
    expect(paper.listing.claims.some((c) => c.id === 'headline/name')).toBe(false);
  });
});
