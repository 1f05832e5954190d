// Why: everything that was said of a thing, the best first, the rest one touch away.
import { useState } from 'react';
import type { Observation } from '../../../said/entry.ts';
import { Said } from './said.tsx';

export function AllSaid({
  of: all,
  first = 2,
  withSubject,
}: {
  of: readonly Observation[];
  first?: number;
  withSubject?: boolean;
}) {
  const [whole, setWhole] = useState(false);
  const shown = whole ? all : all.slice(0, first);
  return (
    <>
      {shown.map((o) => (
        <Said key={o.id} of={o} {...(withSubject ? { withSubject } : {})} />
      ))}
      {shown.length < all.length && (
        <button type="button" onClick={() => setWhole(true)}>
          {all.length - shown.length === 1
            ? 'Show one more that was said'
            : `Show ${all.length - shown.length} more that were said`}
        </button>
      )}
    </>
  );
}
