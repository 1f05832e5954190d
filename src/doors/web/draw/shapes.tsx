// Why: the unit's lines, drawn the same large and small.
import type { Role, Shape } from '../../../published/drawing/shape.ts';
import { across, down, pathOf, type Scale } from './path-of.ts';

const pens: Record<
  Role,
  { readonly stroke: string; readonly strokeWidth: string; readonly strokeDasharray?: string }
> = {
  outline: { stroke: 'var(--ink)', strokeWidth: 'var(--stroke)' },
  thin: { stroke: 'var(--soft)', strokeWidth: 'calc(var(--stroke) * .6)' },
  dashed: { stroke: 'var(--ink)', strokeWidth: 'calc(var(--stroke) * .7)', strokeDasharray: '5 4' },
  ground: { stroke: 'var(--soft)', strokeWidth: 'calc(var(--stroke) * .7)' },
};

export function Shapes({ shapes, scale }: { shapes: readonly Shape[]; scale: Scale }) {
  return shapes.map((s, i) => {
    const { strokeDasharray, ...pen } = pens[s.role];
    const style = { fill: 'none', ...pen };
    const dash = strokeDasharray ? { strokeDasharray } : {};
    return s.is === 'circle' ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a drawing have no names and never move among themselves
      <circle
        key={i}
        cx={across(scale, s.x)}
        cy={down(scale, s.y)}
        r={s.r * scale.perFoot}
        style={style}
        {...dash}
      />
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: see above
      <path key={i} d={pathOf(scale, s)} style={style} {...dash} />
    );
  });
}
