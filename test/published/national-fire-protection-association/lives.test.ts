// Why: an alarm past its years says nothing; the years are those the pages quote, and their worked dates come out the same.
// Tolerance: none. Secondary pages: the standards themselves were not read.
import { expect, test } from 'vitest';
import { judgeOne } from '../../../src/judged/judge-one.ts';
import { rules } from '../../../src/judged/rules/index.ts';
import {
  coAlarmLife,
  coAlarmLifeOld,
  extinguisherInternal,
  extinguisherLife,
  lpAlarmLife,
  lpAlarmLifeLongest,
  smokeAlarmLife,
} from '../../../src/standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { type Limit, limitOn } from '../../../src/standards/standard.ts';
import { day } from '../../../src/units/day.ts';
import { factFrom, factsFromList, proofDay } from '../../facts-from-list.ts';
import lives from '../data/alarm-lives.json' with { type: 'json' };

const value = (limit: Limit): number => limitOn(limit, proofDay).value;
const years = (item: string): readonly number[] => {
  const row = lives.rows.find((r) => r.item.startsWith(item));
  return [...String(row?.years).matchAll(/\d+/g)].map((m) => Number(m[0]));
};

test('the lives are those of the pages', () => {
  expect(years('smoke alarm')).toContain(value(smokeAlarmLife));
  expect(years('CO alarm')).toEqual([value(coAlarmLife), 10, value(coAlarmLifeOld)]);
  expect(years('LP-gas alarm')).toEqual([value(lpAlarmLife), value(lpAlarmLifeLongest)]);
  expect(years('non-rechargeable')).toContain(value(extinguisherLife));
  expect(years('stored-pressure internal')).toContain(value(extinguisherInternal));
});

test.each(lives.checks.map((c) => [`${c.item} made ${c.made} on ${c.on}`, c] as const))('%s', (_, check) => {
  const rule = rules.find(
    (r) => r.id === (check.item === 'smoke alarm' ? 'smoke-alarm-age' : 'lp-alarm-age'),
  )!;
  const fact = { part: rule.part, aspect: rule.aspect, value: { is: 'text', text: check.made } as const };
  const finding = judgeOne(rule, factFrom(fact), factsFromList([fact], 'class-c', {}, day(check.on)));
  expect(finding.outcome === 'fails').toBe(check.expired);
});
