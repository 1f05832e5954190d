// Why: what was found, on the drawing and as lines, the worst first; each with its evidence in the margin.
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { Finding } from '../../../judged/finding.ts';
import { PinnedDrawing } from '../draw/pinned-drawing.tsx';
import { Line } from '../margin/line.tsx';
import { Sheet } from '../margin/sheet.tsx';
import { useChosen } from '../margin/use-chosen.ts';
import { useUnit } from '../unit/unit-context.ts';
import { FindingEvidence } from './finding-evidence.tsx';
import { FindingLine } from './finding-line.tsx';
import { type Grouping, groupFindings, groupings } from './group-findings.ts';

/** So many lines of a group are shown before one asks for the rest. */
const few = 12;

export function Findings() {
  const { unit, packet } = useUnit();
  const [chosenId, choose] = useChosen();
  const [grouping, setGrouping] = useState<Grouping>('by verdict');
  const [whole, setWhole] = useState<ReadonlySet<string>>(new Set());
  const groups = useMemo(() => groupFindings(packet.findings, grouping), [packet, grouping]);
  const chosen = packet.findings.find((f) => f.id === chosenId);
  const seen = packet.findings.some((f) => f.verdict !== 'not seen');
  const evidence = (f: Finding) => <FindingEvidence key={f.id} finding={f} />;

  return (
    <Sheet margin={chosen ? evidence(chosen) : <Unchosen />}>
      <PinnedDrawing findings={packet.findings} chosen={chosen} onChoose={choose} />
      {!seen && (
        <p style={{ marginTop: 16 }}>
          Nothing has been looked at yet.{' '}
          <Link href={`/unit/${unit}/add`}>Add the files of a walk, or write down what you saw</Link>; below
          is what a walk should look at.
        </p>
      )}
      <div className="choices" role="radiogroup" aria-label="Group the findings">
        {groupings.map((g) => (
          <label key={g}>
            <input type="radio" name="grouping" checked={grouping === g} onChange={() => setGrouping(g)} />
            <span>{g}</span>
          </label>
        ))}
      </div>
      {groups.map(({ head, hint, findings }) => {
        const open = whole.has(head) || findings.length <= few + 3;
        const shown = open ? findings : findings.filter((f, i) => i < few || f.id === chosenId);
        return (
          <section key={head} aria-label={head}>
            <h2>
              {head} <span className="num soft">{findings.length}</span>
            </h2>
            {hint && <p className="small soft">{hint}</p>}
            <ol className="lines">
              {shown.map((f) => (
                <Line
                  key={f.id}
                  chosen={f.id === chosenId}
                  onChoose={() => choose(f.id)}
                  evidence={() => evidence(f)}
                >
                  <FindingLine finding={f} />
                </Line>
              ))}
            </ol>
            {!open && (
              <p>
                <button type="button" className="text" onClick={() => setWhole(new Set([...whole, head]))}>
                  Show the other {findings.length - shown.length}
                </button>
              </p>
            )}
          </section>
        );
      })}
    </Sheet>
  );
}

function Unchosen() {
  return (
    <p className="soft">
      Choose a line, or a mark on the drawing: what was said, the reading, the limit and what to do stand
      here.
    </p>
  );
}
