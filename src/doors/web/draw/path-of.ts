// Why: the drawing is kept in feet with y upward; a screen wants pixels with y downward.
import type { Segment, Shape } from '../../../published/drawing/shape.ts';

/** Puts feet on a screen: left and top edges in feet, and pixels to a foot. */
export interface Scale {
  readonly left: number;
  readonly top: number;
  readonly perFoot: number;
}

export const across = (s: Scale, x: number): number => Math.round((x - s.left) * s.perFoot * 10) / 10;
export const down = (s: Scale, y: number): number => Math.round((s.top - y) * s.perFoot * 10) / 10;

function step(s: Scale, g: Segment): string {
  const to = `${across(s, g.x)} ${down(s, g.y)}`;
  switch (g.to) {
    case 'move':
      return `M${to}`;
    case 'line':
      return `L${to}`;
    case 'curve':
      return `Q${across(s, g.cx)} ${down(s, g.cy)} ${to}`;
    case 'arc': {
      const r = g.r * s.perFoot;
      // The model counts its turning with y upward, as the screen's sweep does with y downward: clockwise stays clockwise.
      return `A${r} ${r} 0 0 ${g.clockwise ? 1 : 0} ${to}`;
    }
  }
}

/** The path of a shape, as SVG writes it. */
export const pathOf = (s: Scale, shape: Extract<Shape, { is: 'path' }>): string =>
  shape.path.map((g) => step(s, g)).join('') + (shape.closed ? 'Z' : '');
