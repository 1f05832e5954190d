// Why: the drawing is the index to what was found: both sides, and choosing a pin chooses its line.
import { useEffect, useMemo, useState } from 'react';
import type { Finding } from '../../../judged/finding.ts';
import { useNarrow } from '../margin/use-narrow.ts';
import { useUnit } from '../unit/unit-context.ts';
import { CoachDrawing } from './coach-drawing.tsx';
import { drawingWithPins, type View, views } from './drawing-with-pins.ts';

interface Props {
  readonly findings: readonly Finding[];
  readonly chosen: Finding | undefined;
  readonly onChoose: (finding: string) => void;
}

export function PinnedDrawing({ findings, chosen, onChoose }: Props) {
  const { packet } = useUnit();
  const [view, setView] = useState<View>('road side');
  // A small drawing is crowded by what is only to be watched.
  const narrow = useNarrow();
  const [wanted, setWanted] = useState<boolean>();
  const withWatch = chosen?.verdict === 'watch' || (wanted ?? !narrow);
  const drawings = useMemo(
    () => views.map((v) => drawingWithPins(packet.facts, findings, v, withWatch)),
    [packet, findings, withWatch],
  );
  const id = chosen?.id;
  useEffect(() => {
    const on = drawings.find((d) => d.pins.some((p) => p.id === id));
    if (on) setView(on.view);
  }, [id, drawings]);
  const drawing = drawings.find((d) => d.view === view);
  if (!drawing) return null;
  return (
    <figure className="drawing">
      <CoachDrawing drawing={drawing} chosen={id} onChoose={onChoose} />
      <figcaption>
        <div className="choices quiet" role="radiogroup" aria-label="Side of the unit">
          {drawings.map((d) => (
            <label key={d.view}>
              <input type="radio" name="view" checked={view === d.view} onChange={() => setView(d.view)} />
              <span>
                {d.view} <span className="num">{d.pins.length}</span>
              </span>
            </label>
          ))}
        </div>
        <label className="row quiet">
          <input type="checkbox" checked={withWatch} onChange={(e) => setWanted(e.target.checked)} />
          <span>mark also what to watch</span>
        </label>
        <span className="note">to scale, one square = 1 ft; dashed where it is only assumed</span>
      </figcaption>
    </figure>
  );
}
