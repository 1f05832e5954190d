// Why: the way from one sheet of a unit to the next.
import { Link } from 'wouter';
import { sheets } from './sheets.ts';
import { useUnit } from './unit-context.ts';

export function UnitSheets({ shown }: { shown: string }) {
  const { unit } = useUnit();
  return (
    <nav className="sheets" aria-label="Sheets of this unit">
      {sheets.map((s) => (
        <Link key={s.id} href={`/unit/${unit}/${s.id}`} aria-current={s.id === shown ? 'page' : undefined}>
          {s.name}
        </Link>
      ))}
    </nav>
  );
}
