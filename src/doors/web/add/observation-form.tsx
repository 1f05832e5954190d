// Why: one observation by hand, new or instead of an older one: which part, where, what of it, and how sure.
import { type FormEvent, type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { aspectOf, partOf } from '../../../catalogue/index.ts';
import { subjectTitle } from '../../../published/plain-subject.ts';
import type { Observation, Value } from '../../../said/entry.ts';
import type { Draft } from '../kept/new-entry.ts';
import { useUnit } from '../unit/unit-context.ts';
import { draftObservation, type Manner, type Spoken } from './draft-observation.ts';
import { MannerFields } from './manner-fields.tsx';
import { PartSearch } from './part-search.tsx';
import { AspectSelect, PlaceSelect } from './subject-selects.tsx';
import { type Cells, cellsOf, emptyCells, readCells } from './value-cells.ts';
import { ValueField } from './value-field.tsx';

export interface Subject {
  readonly part: string | undefined;
  readonly place: string | undefined;
  readonly aspect: string | undefined;
  readonly value?: Value | undefined;
}

interface Props {
  readonly subject?: Subject;
  readonly replaces?: Observation;
  /** The words it is made of. */
  readonly spoken?: Spoken;
  /** For quick hands: the value first and in focus, what is seldom changed folded away; Escape leaves it. */
  readonly quick?: boolean;
  /** What is done with it; else it is written into the log. */
  readonly onWrite?: (draft: Draft<'observation'>) => void;
  readonly onDone?: () => void;
}

export function ObservationForm({ subject, replaces, spoken, quick, onWrite, onDone }: Props) {
  const { packet, write } = useUnit();
  const [part, setPart] = useState(replaces?.part ?? subject?.part);
  const [place, setPlace] = useState(replaces?.place ?? subject?.place ?? '');
  const [aspect, setAspect] = useState(replaces?.aspect ?? subject?.aspect ?? '');
  const before = replaces?.value ?? subject?.value;
  const [cells, setCells] = useState<Cells>(before ? cellsOf(before) : emptyCells);
  const [manner, setManner] = useState<Manner>({
    doubtful: replaces?.hedged ?? false,
    saidBy: replaces?.saidBy ?? '',
    note: '',
  });
  const [says, setSays] = useState('');
  const form = useRef<HTMLFormElement>(null);
  const known = part === undefined ? undefined : partOf(part);
  const about = part === undefined ? undefined : aspectOf(part, aspect);

  useEffect(() => {
    if (!quick) return;
    const first = form.current?.querySelector<HTMLInputElement>(
      '.value input:checked, .value input, .value select, [role="combobox"]',
    );
    form.current?.scrollIntoView({ block: 'nearest' });
    first?.focus();
    if (first?.type === 'text') first.select();
  }, [quick]);

  const submit = (e?: FormEvent): void => {
    e?.preventDefault();
    if (part === undefined || about === undefined) {
      setSays(part === undefined ? 'Choose a part first.' : 'Choose what you are saying of it.');
      return;
    }
    const read = readCells(about, cells);
    if ('trouble' in read) {
      setSays(read.trouble);
      return;
    }
    const draft = draftObservation({
      part,
      place,
      aspect: about,
      value: read.value,
      manner,
      replaces,
      ...(spoken ? { spoken } : {}),
    });
    if (onWrite) onWrite(draft);
    else write<'observation'>(draft);
    setSays(`Kept: ${subjectTitle({ part, place: place || undefined })}.`);
    setCells(emptyCells);
    setManner({ doubtful: false, saidBy: '', note: '' });
    onDone?.();
  };
  const key = (e: KeyboardEvent): void => {
    if (e.key === 'Escape' && quick) onDone?.();
    else if (e.key === 'Enter' && e.target instanceof HTMLSelectElement) submit();
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  const value = about && (
    <div className="all value">
      <ValueField
        aspect={about}
        cells={cells}
        onChange={(next) => {
          setCells(next);
          setSays('');
        }}
      />
    </div>
  );
  const search = (
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
  );
  const saying = (
    <p className={`all ${says && !says.startsWith('Kept') ? 'trouble' : 'kept'}`} role="status">
      {says}
    </p>
  );
  return (
    <form ref={form} className={quick ? 'form quick' : 'form'} onSubmit={submit} onKeyDown={key} noValidate>
      {quick ? value : search}
      {quick && saying}
      {known && (
        <>
          <PlaceSelect part={known} place={place} onChange={setPlace} />
          <AspectSelect
            part={known}
            aspect={aspect}
            onChange={(a) => {
              setAspect(a);
              setSays('');
              // What is typed stays where it can be read as the new thing too.
              const next = aspectOf(known.id, a);
              if (!next || !about || next.kind !== about.kind) setCells(emptyCells);
            }}
          />
          {!quick && value}
        </>
      )}
      {quick && search}
      {known && (
        <>
          <MannerFields manner={manner} onChange={setManner} folded={quick === true} />
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
      {!quick && saying}
    </form>
  );
}
