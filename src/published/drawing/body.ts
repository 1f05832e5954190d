// Why: each kind of unit has its own outline; drawn plainly from its sizes, seen from the road side with the front to the left.
import { type Axles, axlesOf } from './axles.ts';
import { box, circle, line, polygon, type Role, type Segment, type Shape } from './shape.ts';
import { isDoubtful, type Sizes } from './sizes.ts';

const skirt = 1.15;

/** Bottom edge from rear to front with an arch over each wheel. */
function underside(
  from: number,
  to: number,
  y: number,
  wheels: readonly number[],
  radius: number,
): Segment[] {
  const arch = radius + 0.35;
  const half = Math.sqrt(Math.max(0.01, arch ** 2 - (y - radius) ** 2));
  const here = wheels.filter((w) => w - half > to && w + half < from).toSorted((a, b) => b - a);
  return [
    ...here.flatMap((w): Segment[] => [
      { to: 'line', x: w + half, y },
      { to: 'arc', r: arch, clockwise: false, x: w - half, y },
    ]),
    { to: 'line', x: to, y },
  ];
}

/** The outline of the body, from its lower front corner over the roof to the rear and back underneath. */
function outline(s: Sizes, axles: Axles, role: Role): Shape[] {
  const L = s.length.feet;
  const top = s.height.feet - 1;
  const wheels = [...(axles.front === undefined ? [] : [axles.front]), ...axles.rear];
  const closed = (path: readonly Segment[]): Shape => ({ is: 'path', role, closed: true, path });
  const back: Segment[] = [
    { to: 'line', x: L - 0.7, y: top },
    { to: 'curve', cx: L, cy: top, x: L, y: top - 0.8 },
    { to: 'line', x: L, y: skirt },
  ];
  switch (s.kind) {
    case 'class-a-diesel':
    case 'class-a-gas':
      return [
        closed([
          { to: 'move', x: 0.35, y: skirt },
          { to: 'line', x: 0, y: top * 0.62 },
          { to: 'curve', cx: 0.1, cy: top - 0.1, x: 2, y: top },
          ...back,
          ...underside(L, 0.35, skirt, wheels, s.tireRadius),
        ]),
      ];
    case 'class-b':
      return [
        closed([
          { to: 'move', x: 0.1, y: skirt },
          { to: 'line', x: 0, y: 2.6 },
          { to: 'curve', cx: 0.2, cy: 3.7, x: 2.6, y: 4.3 },
          { to: 'line', x: 4.4, y: top - 0.9 },
          { to: 'curve', cx: 5.1, cy: top, x: 6.4, y: top },
          ...back,
          ...underside(L, 0.1, skirt, wheels, s.tireRadius),
        ]),
      ];
    case 'class-c':
      return [
        closed([
          { to: 'move', x: 0.1, y: skirt },
          { to: 'line', x: 0, y: 2.6 },
          { to: 'curve', cx: 0.2, cy: 3.6, x: 3, y: 4.1 },
          { to: 'line', x: 4.3, y: 6.1 },
          { to: 'line', x: 1.6, y: 6.5 },
          { to: 'curve', cx: 1.2, cy: top, x: 3.2, y: top },
          ...back,
          ...underside(L, 0.1, skirt, wheels, s.tireRadius),
        ]),
      ];
    case 'fifth-wheel':
      return [
        closed([
          { to: 'move', x: 8.6, y: 1.9 },
          { to: 'line', x: 8.2, y: 5.6 },
          { to: 'line', x: 0.6, y: 5.6 },
          { to: 'curve', cx: -0.1, cy: top, x: 2.4, y: top },
          { to: 'line', x: L - 0.6, y: top - 0.4 },
          { to: 'line', x: L, y: top - 0.9 },
          { to: 'line', x: L, y: 1.9 },
          ...underside(L, 8.6, 1.9, wheels, s.tireRadius),
        ]),
        polygon('thin', [1.6, 5.6], [2.9, 5.6], [2.5, 4.1], [2, 4.1]),
        line('thin', [9.6, 1.9], [9.6, 0.2], [9.2, 0.2], [10, 0.2]),
      ];
    case 'travel-trailer':
      return [
        closed([
          { to: 'move', x: 3.6, y: 1.7 },
          { to: 'line', x: 3.4, y: 4 },
          { to: 'curve', cx: 3.4, cy: top, x: 5, y: top },
          { to: 'line', x: L - 0.6, y: top },
          { to: 'line', x: L, y: top - 0.7 },
          { to: 'line', x: L, y: 1.7 },
          ...underside(L, 3.6, 1.7, wheels, s.tireRadius),
        ]),
        line('thin', [3.6, 1.75], [0.2, 1.55], [0, 1.75]),
        line('thin', [1, 1.6], [1, 0.2], [0.7, 0.2], [1.3, 0.2]),
      ];
  }
}

/** Windows, bays, doors and roof gear: a hint of the unit, not a survey of it. */
function details(s: Sizes, axles: Axles, view: 'road side' | 'curb side'): Shape[] {
  const L = s.length.feet;
  const top = s.height.feet - 1;
  const trailer = axles.front === undefined;
  const classA = s.kind.startsWith('class-a');
  const start = s.kind === 'travel-trailer' ? 3.8 : s.kind === 'fifth-wheel' ? 9 : classA ? 4.6 : 7;
  const doorAt =
    s.kind === 'class-a-diesel'
      ? 1.6
      : trailer
        ? start + 5
        : s.kind === 'class-b'
          ? 7.2
          : (axles.front ?? 0) + 5;
  const door =
    view === 'curb side' ? [box('thin', doorAt, skirt + 0.4, 2.2, Math.min(6.4, top - skirt - 0.9))] : [];
  const isAtDoor = (from: number, wide: number): boolean =>
    door.length > 0 && from < doorAt + 2.4 && from + wide > doorAt - 0.2;
  const belt = Math.min(top - 2.6, 5.4);
  const panes = Math.max(2, Math.round((L - start) / 7.5));
  const step = (L - start - 1) / panes;
  const windows = Array.from({ length: panes }, (_, i) => start + i * step + step * 0.2)
    .filter((from) => !isAtDoor(from, step * 0.55))
    .map((from) => box('thin', from, belt, step * 0.55, Math.min(2, top - belt - 0.7)));
  const cab: Shape[] = classA
    ? [polygon('thin', [0.15, top * 0.55], [3.6, top * 0.55], [3.6, top - 1], [0.75, top - 1])]
    : trailer
      ? []
      : [polygon('thin', [3.2, 4.4], [5.8, 4.4], [5.8, 5.9], [4.2, 5.9])];
  const units = s.kind === 'class-b' ? [0.6] : L > 30 ? [0.27, 0.74] : [0.5];
  const roofGear = units.map((share) =>
    box('thin', L * share, top, s.kind === 'class-b' ? 2 : 2.6, s.kind === 'class-b' ? 0.6 : 0.95),
  );
  const hidesCab = door.length > 0 && s.kind === 'class-a-diesel';
  return [
    ...windows,
    ...(hidesCab ? [] : cab),
    ...bays(s, axles, trailer ? start : 0.3, belt),
    ...door,
    ...roofGear,
    box('thin', L * 0.6, top, 1.3, 0.3),
  ];
}

/** Doors of the bays under the floor, between and behind the wheels. */
function bays(s: Sizes, axles: Axles, from: number, belt: number): Shape[] {
  if (s.kind === 'class-b' || s.kind === 'class-c') return [];
  const L = s.length.feet;
  const sill = Math.min(4, belt - 0.7);
  const low = axles.front === undefined ? 1.9 : skirt;
  const wheels = [...(axles.front === undefined ? [] : [axles.front]), ...axles.rear];
  const doors = Array.from({ length: Math.floor((L - from) / 4.5) }, (_, i) => from + (i + 1) * 4.5).filter(
    (x) => x < L - 1 && wheels.every((w) => Math.abs(w - x) > s.tireRadius + 0.9),
  );
  return [line('thin', [from, sill], [L, sill]), ...doors.map((x) => line('thin', [x, low], [x, sill]))];
}

/** The unit from its road side or curb side in coach coordinates (front at x = 0); a view from the curb is mirrored by the caller. */
export function bodyOf(s: Sizes, view: 'road side' | 'curb side'): readonly Shape[] {
  const axles = axlesOf(s);
  const role: Role = isDoubtful(s.length) || isDoubtful(s.height) ? 'dashed' : 'outline';
  const wheels = [...(axles.front === undefined ? [] : [axles.front]), ...axles.rear];
  return [
    ...outline(s, axles, role),
    ...details(s, axles, view),
    ...wheels.flatMap((x) => [
      circle(isDoubtful(s.wheelbase) ? 'dashed' : 'outline', x, s.tireRadius, s.tireRadius),
      circle('thin', x, s.tireRadius, s.tireRadius * 0.5),
    ]),
    line('ground', [-2, 0], [s.length.feet + 2, 0]),
  ];
}
