// Why: the coach is drawn once, in feet, and put on paper or screen by whoever shows it.

/** A step of a path. Feet; x runs along the view from its left end, y up from the road. `arc` is a circle's arc of radius r. */
export type Segment =
  | { readonly to: 'move' | 'line'; readonly x: number; readonly y: number }
  | { readonly to: 'curve'; readonly cx: number; readonly cy: number; readonly x: number; readonly y: number }
  | {
      readonly to: 'arc';
      readonly r: number;
      readonly clockwise: boolean;
      readonly x: number;
      readonly y: number;
    };

/** outline: the body; thin: doors, windows; dashed: what moves out or is only assumed; ground: the road. */
export type Role = 'outline' | 'thin' | 'dashed' | 'ground';

export type Shape =
  | { readonly is: 'path'; readonly role: Role; readonly closed: boolean; readonly path: readonly Segment[] }
  | {
      readonly is: 'circle';
      readonly role: Role;
      readonly x: number;
      readonly y: number;
      readonly r: number;
    };

type Point = readonly [x: number, y: number];

export const polygon = (role: Role, ...points: readonly Point[]): Shape => ({
  is: 'path',
  role,
  closed: true,
  path: points.map(([x, y], i) => ({ to: i === 0 ? 'move' : 'line', x, y })),
});
export const line = (role: Role, ...points: readonly Point[]): Shape => ({
  ...(polygon(role, ...points) as Extract<Shape, { is: 'path' }>),
  closed: false,
});
export const box = (role: Role, left: number, bottom: number, width: number, height: number): Shape =>
  polygon(
    role,
    [left, bottom],
    [left + width, bottom],
    [left + width, bottom + height],
    [left, bottom + height],
  );
export const circle = (role: Role, x: number, y: number, r: number): Shape => ({
  is: 'circle',
  role,
  x,
  y,
  r,
});

/** The same seen from the other side: x counted from the other end of a view of that width. */
export function mirrored(shape: Shape, width: number): Shape {
  if (shape.is === 'circle') return { ...shape, x: width - shape.x };
  return {
    ...shape,
    path: shape.path.map((s) => {
      const x = width - s.x;
      if (s.to === 'curve') return { ...s, x, cx: width - s.cx };
      return s.to === 'arc' ? { ...s, x, clockwise: !s.clockwise } : { ...s, x };
    }),
  };
}
