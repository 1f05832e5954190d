// Why: the paper is changed from any screen with one touch.
import { useState } from 'react';
import { chooseMode, chosenMode, type Mode, modes } from './mode.ts';

const names: Record<Mode, string> = { day: 'Day', dark: 'Dark', sun: 'Full sun' };

export function ModeSwitch() {
  const [mode, setMode] = useState(chosenMode);
  const shown = mode ?? (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'day');
  return (
    <fieldset className="choices quiet">
      <legend className="unseen">Paper</legend>
      {modes.map((m) => (
        <label key={m}>
          <input
            type="radio"
            name="mode"
            checked={shown === m}
            onChange={() => {
              chooseMode(m);
              setMode(m);
            }}
          />
          <span>{names[m]}</span>
        </label>
      ))}
    </fieldset>
  );
}
