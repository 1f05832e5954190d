// Why: which unit this is, how long it has stood here, and how it stands, on every sheet.
import { Link } from 'wouter';
import { vehicleKindNames } from '../../../catalogue/vehicle-kind.ts';
import { unitName } from '../../../known/unit-name.ts';
import { daysBetween, readDay } from '../../../units/day.ts';
import { nameless } from '../kept/writer.ts';
import { Tally } from '../mark/tally.tsx';
import { ModeSwitch } from '../mode/mode-switch.tsx';
import { useUnit } from './unit-context.ts';

const hereWords = (days: number): string =>
  days <= 0 ? 'came in today' : days === 1 ? 'here 1 day' : `here ${days} days`;

function walkedBy(names: readonly string[]): string {
  if (names.length === 0) return 'not walked yet';
  const known = [...new Set(names)].filter((n) => n !== nameless);
  return known.length === 0 ? 'walked' : `walked by ${known.join(', ')}`;
}

export function UnitHead() {
  const { packet } = useUnit();
  const { unit, walks } = packet.record;
  const arrived = readDay(unit.arrived ?? '');
  const here = arrived && daysBetween(arrived, packet.on);
  const about = [
    unit.stock && `Stock ${unit.stock}`,
    unit.vehicle && vehicleKindNames[unit.vehicle],
    unit.year && `year ${unit.year}`,
    here !== undefined && hereWords(here),
    walkedBy(walks.map((w) => w.by)),
  ].filter(Boolean);
  const named = unitName(packet.facts);
  document.title = `${named} · Walkwright`;
  return (
    <header className="head unit-head">
      <div className="top">
        <Link className="back" href="/">
          The yard
        </Link>
        <ModeSwitch />
      </div>
      <div>
        <h1>{named}</h1>
        <p className="about">
          {about.join(' · ')}
          {unit.invented && ' (invented unit)'}
        </p>
      </div>
      <Tally tally={packet.report.tally} />
    </header>
  );
}
