// Why: one observation by hand, new or instead of an older one: which part, where, what of it, and how sure.
import { type FormEvent, useState } from 'react';
import { generalAspects } from '../../../catalogue/general-aspect.ts';
import { aspectOf, partOf } from '../../../catalogue/index.ts';
import { placeName, places } from '../../../catalogue/place.ts';
import { subjectTitle } from '../../../published/plain-subject.ts';
import type { Observation } from '../../../said/entry.ts';
import { useUnit } from '../unit/unit-context.ts';
import { draftObservation, type Manner } from './draft-observation.ts';
import { PartSearch } from './part-search.tsx';
import { type Cells, cellsOf, emptyCells, readCells } from './value-cells.ts';
import { ValueField } from './value-field.tsx';

interface Props {
  readonly subject?: {
    readonly part: string | undefined;
    readonly place: string | undefined;
    readonly aspect: string | undefined;
  };
  readonly replaces?: Observation;
  readonly onDone?: () => void;
}

export function ObservationForm({ subject, replaces, onDone }: Props) {
  const { packet, write } = useUnit();
  const [part, setPart] = useState(replaces?.part ?? subject?.part);
  const [place, setPlace] = useState(replaces?.place ?? subject?.place ?? '');
  const [aspect, setAspect] = useState(replaces?.aspect ?? subject?.aspect ?? '');
  const [cells, setCells] = useState<Cells>(replaces ? cellsOf(replaces.value) : emptyCells);
  const [manner, setManner] = useState<Manner>({
    doubtful: replaces?.hedged ?? false,
    saidBy: replaces?.saidBy ?? '',
    note: '',
  });
  const [says, setSays] = useState('');
  const known = part === undefined ? undefined : partOf(part);
  const about = part === undefined ? undefined : aspectOf(part, aspect);
  const own = known?.places ?? [];
  const otherPlaces = Object.keys(places).filter((p) => !own.includes(p));
  const ownAspects = known?.aspects ?? [];
  const general = generalAspects.filter((g) => !ownAspects.some((a) => a.id === g.id));

  const submit = (e: FormEvent): void => {
    e.preventDefault();
    if (part === undefined || about === undefined) {
      setSays(part === undefined ? 'Choose a part first.' : 'Choose what you are saying of it.');
      return;
    }
    const read = readCells(about, cells);
    if ('trouble' in read) {
      setSays(read.trouble);
      return;
    }
    write<'observation'>(
      draftObservation({ part, place, aspect: about, value: read.value, manner, replaces }),
    );
    setSays(`Kept: ${subjectTitle({ part, place: place || undefined })}.`);
    setCells(emptyCells);
    setManner({ doubtful: false, saidBy: '', note: '' });
    onDone?.();
  };

  return (
    <form className="form" onSubmit={submit} noValidate>
      <div className="all">
        <PartSearch
          kind={packet.facts.kind}
          part={part}
          onChoose={(p) => {
            setPart(p);
            setPlace('');
            setAspect(p === undefined ? '' : (partOf(p)?.aspects[0]?.id ?? 'condition'));
            setCells(emptyCells);
            setSays('');
          }}
        />
      </div>
      {known && (
        <>
          <label>
            <span className="ask">Where on the unit?</span>
            <select value={place} onChange={(e) => setPlace(e.target.value)}>
              <option value="">no particular place</option>
              {own.map((p) => (
                <option key={p} value={p}>
                  {placeName(p)}
                </option>
              ))}
              <optgroup label="elsewhere">
                {otherPlaces.map((p) => (
                  <option key={p} value={p}>
                    {placeName(p)}
                  </option>
                ))}
              </optgroup>
            </select>
          </label>
          <label>
            <span className="ask">What of it?</span>
            <select
              value={aspect}
              onChange={(e) => {
                setAspect(e.target.value);
                setCells(emptyCells);
              }}
            >
              {ownAspects.map((a) => (
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
          {about && (
            <div className="all">
              <ValueField aspect={about} cells={cells} onChange={setCells} />
            </div>
          )}
          <label>
            <span className="ask">Who told you, if you did not see it?</span>
            <input
              value={manner.saidBy}
              maxLength={120}
              placeholder="the seller"
              onChange={(e) => setManner({ ...manner, saidBy: e.target.value })}
            />
          </label>
          <label>
            <span className="ask">Anything to add?</span>
            <input
              value={manner.note}
              maxLength={2000}
              placeholder="gauge, photo, how you looked"
              onChange={(e) => setManner({ ...manner, note: e.target.value })}
            />
          </label>
          <label className="row all">
            <input
              type="checkbox"
              checked={manner.doubtful}
              onChange={(e) => setManner({ ...manner, doubtful: e.target.checked })}
            />
            <span>I am not quite sure of it</span>
          </label>
          <div className="row all">
            <button type="submit" className="chief">
              {replaces ? 'Put this in its place' : 'Write it down'}
            </button>
            {onDone && (
              <button type="button" onClick={onDone}>
                Not now
              </button>
            )}
          </div>
        </>
      )}
      <p className="all" role="status" style={{ margin: 0, minHeight: 24 }}>
        {says}
      </p>
    </form>
  );
}
