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
  return shapes.map((s) => {
    const { strokeDasharray, ...pen } = pens[s.role];
    const style = { fill: 'none', ...pen };
    const dash = strokeDasharray ? { strokeDasharray } : {};
    const key = s.is === 'circle' ? `${s.x} ${s.y} ${s.r}` : pathOf(scale, s);
    return s.is === 'circle' ? (
      <circle
        key={key}
        cx={across(scale, s.x)}
        cy={down(scale, s.y)}
        r={s.r * scale.perFoot}
        style={style}
        {...dash}
      />
    ) : (
      <path key={key} d={key} style={style} {...dash} />
    );
  });
}
