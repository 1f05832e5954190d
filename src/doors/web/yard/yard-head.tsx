// Why: whose yard this is, how many stand in it, who is writing, and on what paper.
import { plainDay } from '../../../published/plain-day.ts';
import { useAbout, useToday } from '../ask/about.tsx';
import { WriterField } from '../kept/writer-field.tsx';
import { ModeSwitch } from '../mode/mode-switch.tsx';

export function YardHead({ units }: { units: number | undefined }) {
  const { dealership } = useAbout();
  const today = useToday();
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
        <WriterField />
        <ModeSwitch />
      </div>
    </header>
  );
}
