// Why: an input of a figure opens to the words it came from, so that no number stands alone.
import { useState } from 'react';
import type { Given, Need } from '../../../figured/figure.ts';
import { sayCitation } from '../../words/say-limit.ts';
import { sayValue } from '../../words/say-value.ts';
import { AllSaid } from '../margin/all-said.tsx';

const from: Record<Given['from'], string> = {
  seen: 'seen or said on the walk',
  figured: 'itself worked out',
  plate: "off the unit's own plate",
  default: 'supposed, as nobody has said',
  given: 'given by hand',
};

export function FigureInput({ need, given }: { need: Need; given: Given }) {
  const [open, setOpen] = useState(false);
  const evidence = given.fact?.evidence ?? [];
  const cites = given.cites ?? [];
  const more = evidence.length > 0 || cites.length > 0;
  return (
    <li style={{ padding: '6px 0' }}>
      <div className="row" style={{ justifyContent: 'space-between' }}>
        <span>{need.what}</span>
        <span className="num">{sayValue(given.value, need.part, need.aspect)}</span>
      </div>
      <div className="row small soft" style={{ justifyContent: 'space-between' }}>
        <span>{from[given.from]}</span>
        {more && (
          <button type="button" className="text" aria-expanded={open} onClick={() => setOpen(!open)}>
            {open ? 'Close' : 'Where from'}
          </button>
        )}
      </div>
      {open && (
        <>
          <AllSaid of={evidence} first={1} withSubject />
          {cites.map((c) => (
            <p key={`${c.source.id}${c.clause}`} className="small soft">
              {sayCitation(c)}
            </p>
          ))}
        </>
      )}
    </li>
  );
}
