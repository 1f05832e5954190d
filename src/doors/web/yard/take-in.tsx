// Why: a unit comes in with what stands on paper about it; only its kind and a name are asked for.
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { type VehicleKind, vehicleKindNames, vehicleKinds } from '../../../catalogue/vehicle-kind.ts';
import { useAbout, useToday } from '../ask/about.tsx';
import { newEntry, newId } from '../kept/new-entry.ts';
import { put } from '../kept/outbox.ts';

const textFields = [
  { name: 'stock', ask: 'Stock number' },
  { name: 'maker', ask: 'Maker' },
  { name: 'model', ask: 'Model' },
] as const;

export function TakeIn({ onDone }: { onDone: () => void }) {
  const { dealership } = useAbout();
  const today = useToday();
  const [, navigate] = useLocation();
  const [missing, setMissing] = useState('');
  const first = useRef<HTMLSelectElement>(null);
  useEffect(() => first.current?.focus(), []);

  const submit = (e: FormEvent<HTMLFormElement>): void => {
    e.preventDefault();
    const form = new FormData(e.currentTarget);
    const said = (name: string): string => String(form.get(name) ?? '').trim();
    const kind = vehicleKinds.find((k) => k === said('vehicle'));
    if (!kind || said('name') === '') {
      setMissing(kind ? 'Give it a name to call it by.' : 'Choose what kind of vehicle it is.');
      return;
    }
    const year = Number(said('year'));
    if (said('year') !== '' && !(Number.isInteger(year) && year >= 1900 && year <= 2100)) {
      setMissing('Write the year with its four digits.');
      return;
    }
    const unit = newId();
    put([
      newEntry<'unit'>(dealership, unit, {
        kind: 'unit',
        vehicle: kind,
        name: said('name'),
        ...Object.fromEntries(
          textFields.filter((f) => said(f.name) !== '').map((f) => [f.name, said(f.name)]),
        ),
        ...(said('year') !== '' ? { year } : {}),
        ...(said('arrived') !== '' ? { arrived: said('arrived') } : {}),
      }),
    ]);
    onDone();
    navigate(`/unit/${unit}/add`);
  };

  return (
    <section aria-labelledby="take-in">
      <h2 id="take-in">Take in a unit</h2>
      <form className="form" onSubmit={submit} noValidate>
        <label>
          <span className="ask">What kind is it?</span>
          <select name="vehicle" ref={first} defaultValue="">
            <option value="" disabled>
              Choose one
            </option>
            {vehicleKinds.map((k: VehicleKind) => (
              <option key={k} value={k}>
                {vehicleKindNames[k]}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span className="ask">What do you call it?</span>
          <input name="name" maxLength={200} autoComplete="off" />
        </label>
        {textFields.map((f) => (
          <label key={f.name}>
            <span className="ask">{f.ask}</span>
            <input name={f.name} maxLength={80} autoComplete="off" />
          </label>
        ))}
        <label>
          <span className="ask">Year on the papers</span>
          <input name="year" type="number" inputMode="numeric" min={1900} max={2100} />
        </label>
        <label>
          <span className="ask">Came in on</span>
          <input name="arrived" type="date" defaultValue={today} />
        </label>
        <div className="row all">
          <button type="submit" className="chief">
            Take it in
          </button>
          <button type="button" onClick={onDone}>
            Not now
          </button>
          {missing && <span role="alert">{missing}</span>}
        </div>
      </form>
    </section>
  );
}
