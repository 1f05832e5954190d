// Why: one side of the unit to scale on paper ruled in feet, with how each size is known and a pin on every fault.
import { type KeyboardEvent, useId } from 'react';
import type { Drawing } from '../../../published/drawing/drawing.ts';
import { VerdictShape, verdictClass } from '../mark/verdict-mark.tsx';
import { useWidth } from '../strip/use-width.ts';
import { Dimension } from './dimension.tsx';
import { across, down, type Scale } from './path-of.ts';
import { Shapes } from './shapes.tsx';

interface Props {
  readonly drawing: Drawing;
  readonly chosen: string | undefined;
  readonly onChoose: (finding: string) => void;
}

export function CoachDrawing({ drawing, chosen, onChoose }: Props) {
  const [ref, width] = useWidth<SVGSVGElement>(900);
  const grid = useId();
  const { bounds } = drawing;
  const perFoot = width / (bounds.right - bounds.left);
  const scale: Scale = { left: bounds.left, top: bounds.top, perFoot };
  // On a small drawing the words under it need more room than the feet they stand on.
  const height = Math.max((bounds.top - bounds.bottom) * perFoot, down(scale, 0) + 56);
  const size = Math.max(14, Math.min(22, perFoot * 1.25));
  const key = (e: KeyboardEvent, id: string): void => {
    if (e.key !== 'Enter' && e.key !== ' ') return;
    e.preventDefault();
    e.stopPropagation();
    onChoose(id);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing has no other element that groups its parts
    <svg
      ref={ref}
      viewBox={`0 0 ${width} ${height}`}
      style={{ height }}
      role="group"
      aria-label={`The ${drawing.title}; ${drawing.pins.length} marks`}
    >
      <defs>
        <pattern
          id={grid}
          width={perFoot}
          height={perFoot}
          patternUnits="userSpaceOnUse"
          y={down(scale, 0) % perFoot}
          x={across(scale, 0) % perFoot}
        >
          <path d={`M${perFoot} 0H0V${perFoot}`} fill="none" stroke="var(--grid)" strokeWidth="1" />
        </pattern>
      </defs>
      <rect width={width} height={height} fill={`url(#${grid})`} />
      <Shapes shapes={drawing.shapes} scale={scale} />
      {drawing.dimensions.map((d) => (
        <Dimension key={d.what} line={d} scale={scale} />
      ))}
      {drawing.pins.map((p) => (
        // biome-ignore lint/a11y/useSemanticElements: a button cannot stand inside a drawing
        <g
          key={p.id}
          className={`pin ${verdictClass(p.verdict)}`}
          role="button"
          tabIndex={0}
          aria-pressed={p.id === chosen}
          aria-label={p.label}
          transform={`translate(${across(scale, p.x)} ${down(scale, p.y)})`}
          onClick={() => onChoose(p.id)}
          onKeyDown={(e) => key(e, p.id)}
        >
          <title>{p.label}</title>
          <circle className="halo" r={size * 0.78} strokeWidth="2.5" />
          <g transform={`scale(${size / 20}) translate(-10 -10)`}>
            <VerdictShape verdict={p.verdict} />
          </g>
        </g>
      ))}
    </svg>
  );
}
