// Why: every number that was worked out, with its range, and everything it was worked out from in the margin.
import { useMemo } from 'react';
import type { Figure } from '../../../figured/figure.ts';
import { Line } from '../margin/line.tsx';
import { Sheet } from '../margin/sheet.tsx';
import { useChosen } from '../margin/use-chosen.ts';
import { useUnit } from '../unit/unit-context.ts';
import { FigureEvidence } from './figure-evidence.tsx';
import { FigureLine } from './figure-line.tsx';
import { byQuestion } from './questions.ts';

const keyOf = (f: Figure): string => `${f.id}/${f.place ?? ''}`;

export function Figures() {
  const { packet } = useUnit();
  const [chosenId, choose] = useChosen();
  const groups = useMemo(() => byQuestion(packet.figures), [packet]);
  const chosen = packet.figures.find((f) => keyOf(f) === chosenId);
  const evidence = (f: Figure) => <FigureEvidence key={keyOf(f)} figure={f} />;
  return (
    <Sheet
      margin={
        chosen ? (
          evidence(chosen)
        ) : (
          <p className="soft">
            Choose a figure: its inputs, its formula, who published it and what it leaves out stand here.
          </p>
        )
      }
    >
      {groups.map(({ asks, figures }) => (
        <section key={asks} aria-label={asks}>
          <h2>{asks}</h2>
          <ul className="lines">
            {figures.map((f) => (
              <Line
                key={keyOf(f)}
                kind="figure-line"
                chosen={keyOf(f) === chosenId}
                onChoose={() => choose(keyOf(f))}
                evidence={() => evidence(f)}
              >
                <FigureLine figure={f} />
              </Line>
            ))}
          </ul>
        </section>
      ))}
      {groups.length === 0 && <p>No figure applies to this kind of unit yet.</p>}
    </Sheet>
  );
}
