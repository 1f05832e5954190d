// Why: where on the unit, and what of the part: its own places and aspects first, all others after them.
import { generalAspects } from '../../../catalogue/general-aspect.ts';
import type { Part } from '../../../catalogue/part.ts';
import { placeName, places } from '../../../catalogue/place.ts';

interface PlaceProps {
  readonly part: Part;
  readonly place: string;
  readonly onChange: (place: string) => void;
}

export function PlaceSelect({ part, place, onChange }: PlaceProps) {
  const others = Object.keys(places).filter((p) => !part.places.includes(p));
  return (
    <label>
      <span className="ask">Where on the unit?</span>
      <select value={place} onChange={(e) => onChange(e.target.value)}>
        <option value="">no particular place</option>
        {part.places.map((p) => (
          <option key={p} value={p}>
            {placeName(p)}
          </option>
        ))}
        <optgroup label="elsewhere">
          {others.map((p) => (
            <option key={p} value={p}>
              {placeName(p)}
            </option>
          ))}
        </optgroup>
      </select>
    </label>
  );
}

interface AspectProps {
  readonly part: Part;
  readonly aspect: string;
  readonly onChange: (aspect: string) => void;
}

export function AspectSelect({ part, aspect, onChange }: AspectProps) {
  const general = generalAspects.filter((g) => !part.aspects.some((a) => a.id === g.id));
  return (
    <label>
      <span className="ask">What of it?</span>
      <select value={aspect} onChange={(e) => onChange(e.target.value)}>
        {part.aspects.map((a) => (
          <option key={a.id} value={a.id}>
            {a.name}
          </option>
        ))}
        <optgroup label="what can be said of any part">
          {general.map((a) => (
            <option key={a.id} value={a.id}>
              {a.name}
            </option>
          ))}
        </optgroup>
      </select>
    </label>
  );
}
