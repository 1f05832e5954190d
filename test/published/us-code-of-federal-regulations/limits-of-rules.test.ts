// Why: the numbers our rules go by are those of title 49 as read on 24 November 2026, row by row, not as we remember them.
// Tolerance: none; these are the printed numbers.
import { describe, expect, test } from 'vitest';
import { judge } from '../../../src/judged/judge.ts';
import type { Value } from '../../../src/said/entry.ts';
import { type Limit, limitOn } from '../../../src/standards/standard.ts';
import {
  cylinderVisual,
  cylinderVolumetric,
} from '../../../src/standards/us-code-of-federal-regulations/49-cfr-180-209.ts';
import {
  liningAirDrum,
  liningHydraulic,
} from '../../../src/standards/us-code-of-federal-regulations/49-cfr-393-47.ts';
import { stopHeavy, stopLight } from '../../../src/standards/us-code-of-federal-regulations/49-cfr-393-52.ts';
import { windshieldSpot } from '../../../src/standards/us-code-of-federal-regulations/49-cfr-393-60.ts';
import {
  treadOther,
  treadSteer,
} from '../../../src/standards/us-code-of-federal-regulations/49-cfr-393-75.ts';
import {
  lashManual18,
  lashPower18,
} from '../../../src/standards/us-code-of-federal-regulations/49-cfr-393-209.ts';
import {
  airLossApplied,
  airLossReleased,
  airRecharge,
  governorCutIn,
  governorCutOut,
  lowAirWarning,
} from '../../../src/standards/us-code-of-federal-regulations/49-cfr-570-57.ts';
import type { Unit } from '../../../src/units/unit.ts';
import { factsFromList, proofDay } from '../../facts-from-list.ts';
import airBrake from '../data/air-brake-inservice.json' with { type: 'json' };
import stopping from '../data/brakes-393-52.json' with { type: 'json' };
import cylinders from '../data/cylinder-requal.json' with { type: 'json' };
import glazing from '../data/glazing-393-60.json' with { type: 'json' };
import linings from '../data/lining-thickness.json' with { type: 'json' };
import lash from '../data/steering-lash.json' with { type: 'json' };
import tires from '../data/tire-limits.json' with { type: 'json' };

const value = (limit: Limit): number => limitOn(limit, proofDay).value;
const numberIn = (text: string | undefined): number => Number(/(\d+(\.\d+)?)/.exec(text ?? '')?.[1]);
const quantity = (n: number, unit: Unit): Value => ({ is: 'quantity', value: n, unit });

test('393.75: tread of the steer axle and of the others', () => {
  expect(value(treadSteer)).toBe(tires.rows.find((r) => r.item.startsWith('tread, steer'))?.min_32nds);
  expect(value(treadOther)).toBe(tires.rows.find((r) => r.item.startsWith('tread, any other'))?.min_32nds);
});

describe('393.75: the worked depths pass or are stopped as printed', () => {
  const place: Record<string, string> = { steer: 'left-front', drive: 'left-rear-outer', tag: 'left-tag' };
  const depths = tires.checks.filter((c) => c.depth_32nds !== undefined);
  test('there are some', () => expect(depths.length).toBe(4));
  test.each(depths.map((c) => [`${c.axle} ${c.depth_32nds}/32`, c] as const))('%s', (_, check) => {
    const facts = factsFromList(
      [
        {
          part: 'tire',
          place: place[check.axle ?? '']!,
          aspect: 'tread_mid',
          value: quantity(check.depth_32nds!, '[in_i]/32'),
        },
      ],
      'class-a-diesel',
    );
    const finding = judge(facts).find((f) => f.aspect === 'tread_mid' && f.place === place[check.axle ?? '']);
    expect(finding?.verdict === 'stop').toBe(!check.pass);
  });
});

test('393.47: least lining away from the steer axle', () => {
  const least = (type: string) =>
    linings.rows.find((r) => r.axle === 'other' && r.type.startsWith(type))?.min_in;
  expect(value(liningAirDrum)).toBe(least('air drum'));
  expect(value(liningHydraulic)).toBe(least('hydraulic'));
});

test('393.52: feet from 20 mph', () => {
  expect(value(stopHeavy)).toBe(stopping.rows.find((r) => r.cls.startsWith('B2'))?.stop20_ft);
  expect(value(stopLight)).toBe(stopping.rows.find((r) => r.cls.startsWith('B1'))?.stop20_ft);
});

test('393.60: the disc that covers allowed damage', () => {
  expect(value(windshieldSpot)).toBe(glazing.rows.find((r) => r.item.startsWith('damage that a disc'))?.v);
});

test('393.209: lash of an 18-inch wheel', () => {
  const row = lash.rows.find((r) => r.wheel_in === 18);
  expect(value(lashManual18)).toBe(row?.manual_in);
  expect(value(lashPower18)).toBe(row?.power_in);
});

test('570.57: air lost, governor, recharge, warning', () => {
  const printed = (item: string) => numberIn(airBrake.rows.find((r) => r.item === item)?.limit);
  expect(value(airLossReleased)).toBe(printed('leak, brakes released, single'));
  expect(value(airLossApplied)).toBe(printed('leak, brakes applied, single'));
  expect(value(governorCutIn)).toBe(printed('governor cut-in'));
  expect(value(governorCutOut)).toBe(printed('governor cut-out'));
  expect(value(airRecharge)).toBe(printed('recharge time to initial pressure, built >= 1 Mar 1975'));
  expect(value(lowAirWarning)).toBe(printed('low-pressure warning, FMVSS 121 vehicle'));
});

test('180.209: longest and shortest period of a portable cylinder', () => {
  const years = cylinders.rows.map((r) => r.years);
  expect(value(cylinderVolumetric)).toBe(Math.max(...years));
  expect(value(cylinderVisual)).toBe(Math.min(...years));
});
