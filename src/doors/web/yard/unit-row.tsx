// Why: a unit in one row: what it is, where it stands, what blocks it, how much has been looked at.
import { Link } from 'wouter';
import { type VehicleKind, vehicleKindNames, vehicleKinds } from '../../../catalogue/vehicle-kind.ts';
import { cents, showMoney } from '../../../units/money.ts';
import type { YardRow } from '../../wire/api.ts';
import { useAbout } from '../ask/about.tsx';
import { SmallDrawing } from '../draw/small-drawing.tsx';
import { newEntry } from '../kept/new-entry.ts';
import { put } from '../kept/outbox.ts';
import { Tally } from '../mark/tally.tsx';

const stages: Record<YardRow['stage'], string> = {
  'nothing yet': 'Not walked yet',
  walked: 'Walked; the words wait for review',
  reviewed: 'Reviewed; not published yet',
  published: 'Published',
};

const kindOf = (text: string | undefined): VehicleKind | undefined => vehicleKinds.find((k) => k === text);

export function UnitRow({ row }: { row: YardRow }) {
  const { dealership } = useAbout();
  const kind = kindOf(row.vehicle);
  const blockers = [...new Set(row.blockedBy)];
  const share = row.expected > 0 ? row.seen / row.expected : 0;
  const setAway = (putAway: boolean) =>
    put([newEntry<'unit'>(dealership, row.unit, { kind: 'unit', putAway })]);
  const what = [row.stock && `Stock ${row.stock}`, kind && vehicleKindNames[kind], row.year]
    .filter(Boolean)
    .join(' · ');
  return (
    <li>
      <div className="unit-row">
        <div className="picture">
          <SmallDrawing row={row} kind={kind} />
        </div>
        <div>
          <Link className="name" href={`/unit/${row.unit}`}>
            {row.name}
          </Link>
          <div className="small soft">
            {what}
            {row.invented && ' (invented unit)'}
          </div>
          <div className="small">
            {blockers.length > 0 ? (
              <span className="stop">
                <strong>Stopped by</strong> {blockers.slice(0, 3).join('; ')}
                {blockers.length > 3 && ` and ${blockers.length - 3} more`}
              </span>
            ) : (
              'Nothing stops it.'
            )}
          </div>
        </div>
        <div className="small">
          <div>{row.putAway ? 'Put away' : stages[row.stage]}</div>
          <span className="coverage" aria-hidden="true">
            <span style={{ width: `${share * 100}%` }} />
          </span>
          <div className="soft">
            <span className="num">{row.seen}</span> of <span className="num">{row.expected}</span> parts
            looked at
          </div>
          <Tally tally={row.tally} small />
        </div>
        <div className="right">
          <div className={row.askingCents === undefined ? 'no-price' : 'price'}>
            {row.askingCents === undefined ? 'no price yet' : showMoney(cents(row.askingCents))}
          </div>
          <div className="small soft">
            {row.daysHere === undefined
              ? ''
              : row.daysHere === 1
                ? '1 day here'
                : `${row.daysHere} days here`}
          </div>
          {(row.invented || row.putAway) && (
            <button type="button" className="text small" onClick={() => setAway(!row.putAway)}>
              {row.putAway ? 'Bring it back' : 'Put it away'}
            </button>
          )}
        </div>
      </div>
    </li>
  );
}
