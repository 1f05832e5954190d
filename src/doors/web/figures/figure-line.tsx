// Why: a figure in one line: the question, and the answer with its range, or what is missing for one.

import { placeName } from '../../../catalogue/place.ts';
import type { Figure } from '../../../figured/figure.ts';
import { shownValue } from '../../../figured/shown-value.ts';
import { sayGap } from '../../words/say-gap.ts';
import { sayValue } from '../../words/say-value.ts';
import { sayRange } from './say-range.ts';

export function FigureLine({ figure: f }: { figure: Figure }) {
  const { result, card } = f;
  const shown = shownValue(f);
  const range = result.is === 'worked' ? sayRange(shown ?? result.value) : undefined;
  return (
    <>
      <span>
        <span className="name">
          {card.asks}
          {f.place && <span className="soft"> {placeName(f.place)}</span>}
        </span>
        {result.is === 'worked' ? (
          <span className="why">
            {result.binds && `Bound by ${result.binds}. `}
            {range && `${range}. `}
            {result.note}
          </span>
        ) : (
          <span className="why">{sayGap(f)}</span>
        )}
      </span>
      {result.is === 'worked' ? (
        <span className="reading">{sayValue(shown ?? result.value, card.gives.part, card.gives.aspect)}</span>
      ) : (
        <span className="soft">not known yet</span>
      )}
    </>
  );
}
