// Why: a size on the drawing says how it is known, like a draftsman's note; one that is only assumed is dashed.
import type { DimensionLine } from '../../../published/drawing/drawing.ts';
import { across, down, type Scale } from './path-of.ts';

const pen = { fill: 'none', stroke: 'var(--soft)', strokeWidth: 'calc(var(--stroke) * .6)' };
const letters = { font: '11px var(--num)', fill: 'var(--soft)' };
/** A line of dimensions stands at least so far below the road, whatever the scale. */
const least: Record<DimensionLine['what'], number> = { wheelbase: 12, length: 36, height: 0 };

export function Dimension({ line, scale }: { line: DimensionLine; scale: Scale }) {
  const [x1, x2] = [across(scale, line.from[0]), across(scale, line.to[0])];
  const dash = line.assumed ? { strokeDasharray: '4 4' } : {};
  if (line.what === 'height') {
    const [y1, y2] = [down(scale, line.from[1]), down(scale, line.to[1])];
    // A label longer than its line must still stand on the paper.
    const middle = Math.max((y1 + y2) / 2, line.label.length * 3.2 + 4);
    return (
      <g>
        <path d={`M${x1} ${y1}V${y2}`} style={pen} {...dash} />
        <path d={`M${x1 - 5} ${y1}h10M${x1 - 5} ${y2}h10`} style={pen} />
        <text
          style={letters}
          textAnchor="middle"
          transform={`rotate(90 ${x1 + 7} ${middle})`}
          x={x1 + 7}
          y={middle}
        >
          {line.label}
        </text>
      </g>
    );
  }
  const y = Math.max(down(scale, line.from[1]), down(scale, 0) + least[line.what]);
  return (
    <g>
      <path d={`M${x1} ${y}H${x2}`} style={pen} {...dash} />
      <path d={`M${x1} ${y - 5}v10M${x2} ${y - 5}v10`} style={pen} />
      <text style={letters} textAnchor="middle" x={(x1 + x2) / 2} y={y + 14}>
        {line.label}
      </text>
    </g>
  );
}
