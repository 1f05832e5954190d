// Why: a unit is recognised in the yard by its shape and size, all drawn to one scale.
import { useMemo } from 'react';
import type { VehicleKind } from '../../../catalogue/vehicle-kind.ts';
import { factsOf } from '../../../known/facts-of.ts';
import { fold } from '../../../known/fold.ts';
import { bodyOf } from '../../../published/drawing/body.ts';
import { type Sizes, sizesOf } from '../../../published/drawing/sizes.ts';
import type { YardRow } from '../../wire/api.ts';
import { useToday } from '../ask/about.tsx';
import { newEntry } from '../kept/new-entry.ts';
import type { Scale } from './path-of.ts';
import { Shapes } from './shapes.tsx';

/** The longest unit that fits a row, in feet; a longer one makes its own scale. */
const longest = 44;
const wide = 190;

export function SmallDrawing({ row, kind }: { row: YardRow; kind: VehicleKind | undefined }) {
  const today = useToday();
  const sizes = useMemo<Sizes>(() => {
    if (row.sizes) return row.sizes;
    const paper = newEntry<'unit'>('yard', row.unit, { kind: 'unit', ...(kind ? { vehicle: kind } : {}) });
    return sizesOf(factsOf(fold([paper]), today));
  }, [row.sizes, row.unit, kind, today]);
  const shapes = useMemo(() => bodyOf(sizes, 'road side'), [sizes]);
  const perFoot = wide / Math.max(longest, sizes.length.feet + 2);
  const scale: Scale = { left: -1, top: Math.max(13.5, sizes.height.feet + 0.5), perFoot };
  const high = (scale.top + 0.6) * perFoot;
  const known = sizes.length.from !== 'assumed';
  return (
    <svg
      viewBox={`0 0 ${wide} ${high}`}
      style={{ width: '100%', height: 'auto', display: 'block' }}
      role="img"
      aria-label={known ? 'Drawn to scale' : 'Drawn as its kind usually is; nobody has measured it'}
    >
      <Shapes shapes={shapes} scale={scale} />
    </svg>
  );
}
