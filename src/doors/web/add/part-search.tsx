// Why: several hundred parts are found by typing what one would call them.
import { type KeyboardEvent, useId, useMemo, useState } from 'react';
import { partOf, parts, partsFor, stationOf } from '../../../catalogue/index.ts';
import type { Part } from '../../../catalogue/part.ts';
import type { VehicleKind } from '../../../catalogue/vehicle-kind.ts';

interface Props {
  readonly kind: VehicleKind | undefined;
  readonly part: string | undefined;
  readonly onChoose: (part: string | undefined) => void;
}

const most = 12;

/** Parts whose name or spoken words hold every word typed; names that begin with them come first. */
export function findParts(all: readonly Part[], typed: string): readonly Part[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  const rank = (p: Part): number => {
    const name = p.name.toLowerCase();
    if (name.startsWith(words.join(' '))) return 0;
    if (words.every((w) => name.includes(w))) return 1;
    return words.every((w) => name.includes(w) || p.say.some((s) => s.includes(w))) ? 2 : 3;
  };
  return all
    .map((p) => ({ p, at: rank(p) }))
    .filter(({ at }) => at < 3)
    .sort((a, b) => a.at - b.at)
    .slice(0, most)
    .map(({ p }) => p);
}

export function PartSearch({ kind, part, onChoose }: Props) {
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const ids = { input: useId(), list: useId() };
  const all = useMemo(() => (kind ? partsFor(kind) : parts), [kind]);
  const found = findParts(all, typed);
  const chosen = part === undefined ? undefined : partOf(part);

  if (chosen) {
    return (
      <p className="row" style={{ margin: 0 }}>
        <span>
          <strong style={{ fontSize: 19 }}>{chosen.name}</strong>{' '}
          <span className="soft">{stationOf(chosen.station)?.name}</span>
        </span>
        <button type="button" className="text" onClick={() => onChoose(undefined)}>
          Another part
        </button>
      </p>
    );
  }
  const choose = (p: Part | undefined): void => {
    if (!p) return;
    setTyped('');
    onChoose(p.id);
  };
  const key = (e: KeyboardEvent): void => {
    if (e.key === 'ArrowDown' || e.key === 'ArrowUp') {
      e.preventDefault();
      setAt((i) => Math.max(0, Math.min(found.length - 1, i + (e.key === 'ArrowDown' ? 1 : -1))));
    } else if (e.key === 'Enter') {
      e.preventDefault();
      choose(found[at]);
    } else if (e.key === 'Escape') setTyped('');
  };
  return (
    <>
      <label htmlFor={ids.input}>
        <span className="ask">Which part?</span>
      </label>
      <input
        id={ids.input}
        role="combobox"
        aria-expanded={found.length > 0}
        aria-controls={ids.list}
        aria-autocomplete="list"
        aria-activedescendant={found[at] ? `${ids.list}-${at}` : undefined}
        autoComplete="off"
        value={typed}
        placeholder="tire, roof vent, water heater"
        onChange={(e) => {
          setTyped(e.target.value);
          setAt(0);
        }}
        onKeyDown={key}
      />
      <div id={ids.list} role="listbox" aria-label="Parts" className="found" hidden={found.length === 0}>
        {found.map((p, i) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are heard by the input above, which keeps the focus
          // biome-ignore lint/a11y/useFocusableInteractive: an option of a list that its input drives takes no focus of its own
          <div
            key={p.id}
            id={`${ids.list}-${i}`}
            role="option"
            aria-selected={i === at}
            onClick={() => choose(p)}
          >
            <span>{p.name}</span>
            <span className="soft small">{stationOf(p.station)?.name}</span>
          </div>
        ))}
      </div>
      {typed !== '' && found.length === 0 && (
        <p className="hint">No part is called that. Try a shorter or a plainer word.</p>
      )}
    </>
  );
}
