// Why: a drawing that says "to scale" must be, and a pin in the wrong place sends somebody to the wrong wheel.
import { describe, expect, test } from 'vitest';
import { factOf, findingOf, quantityOf, spokenAt, unpublishedOf } from '../../../test/invented-unit.ts';
import { parts } from '../../catalogue/index.ts';
import { vehicleKinds } from '../../catalogue/vehicle-kind.ts';
import type { Finding } from '../../judged/finding.ts';
import { type Drawing, drawingOf } from './drawing.ts';
import { mirrored, type Shape } from './shape.ts';

const known = [
  factOf(
    spokenAt(1, 'coach', 'length', quantityOf(38.2, '[ft_i]', 0.1), 'thirty eight two by the tape measure'),
  ),
  factOf(spokenAt(2, 'coach', 'height', quantityOf(149, '[in_i]'), 'a hundred forty nine on the label')),
  factOf(spokenAt(3, 'coach', 'wheelbase', quantityOf(252, '[in_i]', 3), 'two fifty two')),
  factOf(spokenAt(4, 'coach', 'front_overhang', quantityOf(72, '[in_i]'), 'seventy two measured')),
];
const u = unpublishedOf({ facts: known });
const dimension = (d: Drawing, what: string) => d.dimensions.find((line) => line.what === what)!;
const xs = (shapes: readonly Shape[]): number[] =>
  shapes.flatMap((s) =>
    s.is === 'circle' ? [s.x - s.r, s.x + s.r] : s.role === 'ground' ? [] : s.path.map((p) => p.x),
  );

describe('to scale', () => {
  const d = drawingOf(u.facts, [], 'road side');
  test('sizes are drawn as they are known, and say how', () => {
    expect(d.dimensions.map((line) => [line.what, line.label, line.assumed])).toEqual([
      ['wheelbase', '252 ± 3 in said', false],
      ['length', '38.2 ± 0.1 ft measured', false],
      ['height', '12 ft 5 in label', false],
    ]);
    expect(dimension(d, 'length').to[0] - dimension(d, 'length').from[0]).toBeCloseTo(38.2, 9);
    expect(dimension(d, 'wheelbase').to[0] - dimension(d, 'wheelbase').from[0]).toBeCloseTo(21, 9);
    expect(dimension(d, 'wheelbase').from[0]).toBeCloseTo(6, 9);
  });
  test('the body is as long as the unit', () => {
    expect(Math.max(...xs(d.shapes))).toBeCloseTo(38.2, 6);
    expect(Math.min(...xs(d.shapes))).toBeCloseTo(0, 6);
  });
  test('what nobody knows is assumed in the open', () => {
    for (const vehicle of vehicleKinds) {
      const bare = drawingOf(unpublishedOf({ unit: { vehicle } }).facts, [], 'curb side');
      expect(bare.dimensions.every((line) => line.assumed && line.label.endsWith('assumed'))).toBe(true);
      expect(bare.shapes.some((s) => s.role === 'outline')).toBe(false);
    }
  });
});

describe('pins', () => {
  const front = findingOf({ rule: 'a', place: 'left-front' });
  const inner = findingOf({ rule: 'b', place: 'left-rear-inner' });
  test('a tire is pinned on its wheel as drawn', () => {
    const d = drawingOf(u.facts, [front, inner], 'road side');
    const x = (id: string) => d.pins.find((p) => p.id === id)!.x;
    expect(x(front.id)).toBeCloseTo(6, 6);
    expect(Math.abs(x(inner.id) - 27)).toBeLessThan(1.7);
  });
  test('the curb side is the road side seen from behind the paper', () => {
    const right = findingOf({ rule: 'c', place: 'right-front' });
    const d = drawingOf(u.facts, [right], 'curb side');
    expect(d.pins[0]?.x).toBeCloseTo(38.2 - 6, 6);
  });
  test('every fault is pinned once over the two sides, whatever its part and place, without covering another', () => {
    const findings: Finding[] = parts.slice(0, 60).map((p, i) => {
      const { place: _, ...rest } = findingOf({
        rule: `r${i}`,
        part: p.id,
        verdict: 'watch',
        weight: 'wear',
      });
      return { ...rest, id: `r${i}`, ...(p.places[0] === undefined ? {} : { place: p.places[0] }) };
    });
    const sides = (['road side', 'curb side'] as const).map((v) => drawingOf(u.facts, findings, v).pins);
    expect(
      sides
        .flat()
        .map((p) => p.id)
        .toSorted(),
    ).toEqual(findings.map((f) => f.id).toSorted());
    for (const pins of sides)
      for (const [i, p] of pins.entries())
        for (const q of pins.slice(i + 1)) expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeGreaterThan(0.9);
  });
  test('what is sound or not seen is not pinned', () => {
    expect(
      drawingOf(
        u.facts,
        [
          findingOf({ outcome: 'meets', verdict: 'sound' }),
          findingOf({ rule: 'z', outcome: 'cannot tell', verdict: 'not seen' }),
        ],
        'road side',
      ).pins,
    ).toEqual([]);
  });
});

test('mirrored twice is as before', () => {
  const rounded = (s: Shape): string =>
    JSON.stringify(s, (_, v: unknown) => (typeof v === 'number' ? Number(v.toFixed(6)) : v));
  for (const s of drawingOf(u.facts, [], 'road side').shapes)
    expect(rounded(mirrored(mirrored(s, 40), 40))).toBe(rounded(s));
});
