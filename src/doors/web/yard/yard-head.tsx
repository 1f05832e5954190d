// Why: whose yard this is, how many stand in it, who is writing, and on what paper.
import { useState } from 'react';
import { plainDay } from '../../../published/plain-day.ts';
import { useAbout, useToday } from '../ask/about.tsx';
import { hasWriter, setWriter, writer } from '../kept/writer.ts';
import { ModeSwitch } from '../mode/mode-switch.tsx';

export function YardHead({ units }: { units: number | undefined }) {
  const { dealership } = useAbout();
  const today = useToday();
  const [name, setName] = useState(() => (hasWriter() ? writer() : ''));
  const count = units === undefined ? '' : units === 1 ? 'one unit · ' : `${units} units · `;
  return (
    <header className="head">
      <div>
        <h1>The yard</h1>
        <p className="about">
          {count}
          {plainDay(today)} · {dealership.replaceAll('-', ' ')}
        </p>
      </div>
      <div className="row wide">
        <label className="row small">
          <span>You are</span>
          <input
            className="writer"
            value={name}
            placeholder="your name"
            autoComplete="name"
            onChange={(e) => {
              setName(e.target.value);
              setWriter(e.target.value);
            }}
          />
        </label>
        <ModeSwitch />
      </div>
    </header>
  );
}
