// Why: a reading is typed as it is said, "9/32" or "13.5k btu"; what it was understood as is shown while it is typed.
import { useId } from 'react';
import type { Aspect } from '../../../catalogue/part.ts';
import { plainQuantity } from '../../../published/plain-value.ts';
import { isUnit, type Unit, unitFact } from '../../../units/unit.ts';
import { conversionsOf } from './read-reading.ts';
import { type Cells, readingIn, unitsFor } from './value-cells.ts';

interface Props {
  readonly aspect: Aspect;
  readonly cells: Cells;
  readonly onChange: (cells: Cells) => void;
}

/** As many units as fit under a thumb, none a thousand times larger or smaller; the others are understood when they are written. */
const padded = 5;
const isNear = (a: Unit, b: Unit): boolean =>
  Math.abs(Math.log10(unitFact(a).factor / unitFact(b).factor)) < 3.05;
const padName = (u: Unit): string => unitFact(u).symbol || 'as it is';

export function NumberField({ aspect, cells, onChange }: Props) {
  const name = useId();
  const set = (change: Partial<Cells>) => onChange({ ...cells, ...change });
  const units = unitsFor(aspect);
  const read = readingIn(aspect, cells);
  const reading = typeof read === 'object' ? read : undefined;
  const chosen = reading?.unit ?? (isUnit(cells.unit) ? cells.unit : units[0]);
  const pad = [
    ...new Set([
      ...units.filter((u) => isNear(u, units[0] ?? u)).slice(0, padded),
      ...(chosen ? [chosen] : []),
    ]),
  ];
  /** Another unit for the same number: the one written behind it goes. */
  const take = (unit: Unit): void => {
    const bare = reading
      ? `${reading.value}${reading.upTo === undefined ? '' : ` to ${reading.upTo}`}`
      : cells.value;
    set({ unit, value: bare });
  };
  return (
    <>
      <label>
        <span className="ask">{aspect.name}: how much?</span>
        <input
          className="num reading-field"
          type="text"
          inputMode="text"
          autoComplete="off"
          value={cells.value}
          placeholder={`12.6${units[0] && units[0] !== '1' ? ` ${unitFact(units[0]).symbol}` : ''}`}
          aria-describedby={`${name}-read`}
          onChange={(e) => set({ value: e.target.value })}
        />
      </label>
      <label>
        <span className="ask">Plus or minus</span>
        <input
          className="num"
          inputMode="decimal"
          value={cells.plusOrMinus}
          onChange={(e) => set({ plusOrMinus: e.target.value })}
        />
      </label>
      {pad.length > 1 && (
        <div className="all unit-pad" role="radiogroup" aria-label="In what?">
          {pad.map((u) => (
            <label key={u}>
              <input type="radio" name={name} checked={u === chosen} onChange={() => take(u)} />
              <span>{padName(u)}</span>
            </label>
          ))}
        </div>
      )}
      <p className="all understood" id={`${name}-read`}>
        {reading && (
          <>
            <strong className="num">
              {plainQuantity(reading.value, reading.unit, reading.plusOrMinus, reading.upTo)}
            </strong>
            {conversionsOf(reading).map((c) => (
              <span key={c} className="soft">
                {' '}
                = <span className="num">{c}</span>
              </span>
            ))}
          </>
        )}
      </p>
    </>
  );
}
