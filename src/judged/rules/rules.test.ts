// Why: a rule is believed only as far as its own proofs go; this puts every one of them to the machinery.
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { factFrom, factsFromList, type PlainFact, proofDay } from '../../../test/facts-from-list.ts';
import { aspectOf, partOf } from '../../catalogue/index.ts';
import { type Limit, limitOn } from '../../standards/standard.ts';
import { cautions } from '../caution.ts';
import { judgeOne } from '../judge-one.ts';
import { readingOf } from '../reading.ts';
import type { NumberStep, Proof, Rule } from '../rule.ts';
import { rules } from './index.ts';

const files = readdirSync(new URL('.', import.meta.url)).filter(
  (f) => f.endsWith('.ts') && f !== 'index.ts' && !f.endsWith('.test.ts'),
);

/** A place at which the rule applies, for rules that ask where. */
function placeFor(rule: Rule, list: readonly PlainFact[], value: Proof['given']): string | undefined {
  const places: readonly (string | undefined)[] = [undefined, ...(partOf(rule.part)?.places ?? [])];
  return places.find((place) => {
    const own: PlainFact[] = value
      ? [{ part: rule.part, aspect: rule.aspect, value, ...(place === undefined ? {} : { place }) }]
      : [];
    return rule.appliesTo?.(factsFromList([...list, ...own], 'class-a-diesel'), place) ?? true;
  });
}

function prove(rule: Rule, proof: Proof) {
  const beside = proof.beside ?? [];
  const place = placeFor(rule, beside, proof.given);
  const own: PlainFact[] = proof.given
    ? [
        {
          part: rule.part,
          aspect: rule.aspect,
          value: proof.given,
          ...(place === undefined ? {} : { place }),
        },
      ]
    : [];
  const facts = factsFromList([...beside, ...own], 'class-a-diesel');
  return judgeOne(rule, own[0] && factFrom(own[0]), facts, place);
}

test('every rule file is named for its rule and listed once', () => {
  expect(rules.map((r) => `${r.id}.ts`).sort()).toEqual(files.sort());
  expect(new Set(rules.map((r) => r.id)).size).toBe(rules.length);
});

test('there are rules for every station', () => {
  expect(rules.length).toBeGreaterThanOrEqual(40);
  const stations = new Set(rules.map((r) => partOf(r.part)?.station));
  expect(stations.size).toBe(13);
});

describe.each(rules.map((r) => [r.id, r] as const))('%s', (_, rule) => {
  test('asks about a part and an aspect of the catalogue', () => {
    expect(partOf(rule.part)).toBeDefined();
    expect(aspectOf(rule.part, rule.aspect)).toBeDefined();
    if (rule.caution !== undefined) expect(Object.keys(cautions)).toContain(rule.caution);
  });

  test('every proof comes out as written', () => {
    const got = rule.proofs.map((p) => {
      const f = prove(rule, p);
      return { given: p.given, outcome: f.outcome, verdict: f.verdict };
    });
    expect(got).toEqual(rule.proofs.map(({ given, outcome, verdict }) => ({ given, outcome, verdict })));
  });

  test('the proofs show it meeting, failing and unable to tell, and where nobody looked', () => {
    const outcomes = new Set(rule.proofs.map((p) => p.outcome));
    expect([...outcomes].sort()).toEqual(
      rule.id === 'house-battery-chemistry' ? ['cannot tell', 'meets'] : ['cannot tell', 'fails', 'meets'],
    );
    expect(
      rule.proofs.some(
        (p) => p.given === undefined && p.outcome === 'cannot tell' && p.verdict === 'not seen',
      ),
    ).toBe(true);
  });

  test('one proof stands exactly on each published number', () => {
    const published = rule.steps.filter(
      (s): s is NumberStep & { limit: Limit } => 'must' in s && typeof s.limit !== 'function',
    );
    for (const step of published) {
      const limit = limitOn(step.limit, proofDay).value;
      const onIt = rule.proofs.some((p) => {
        const r = p.given && readingOf(p.given, step.limit.unit, step.must, proofDay, false);
        return r !== undefined && r.low === r.high && Math.abs(r.middle - limit) < 1e-9;
      });
      expect(onIt, `${step.limit.id} = ${limit}`).toBe(true);
    }
  });

  test('its steps are listed worst first', () => {
    const order = ['danger', 'unlawful', 'defect', 'wear'];
    const weights = rule.steps.map((s) => order.indexOf(s.weight));
    expect(weights).toEqual([...weights].sort((a, b) => a - b));
  });

  test('it says a sentence for every outcome, and never calls anything safe', () => {
    for (const words of [...Object.values(rule.says), rule.asks, rule.why, rule.look, rule.next]) {
      expect(words).toMatch(/[.?]$/);
      expect(words).not.toMatch(/\b(is|are|was) safe\b/i);
    }
  });
});
