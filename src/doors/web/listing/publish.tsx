// Why: giving the papers out is one decision, made in sight of what is still stopped, and written into the log.
import { useState } from 'react';
import type { DocumentName, Problem, PublishReply } from '../../wire/api.ts';
import { tell } from '../ask/ask.ts';
import { Trouble } from '../ask/trouble.tsx';
import { useUnit } from '../unit/unit-context.ts';

const papers: readonly { readonly name: DocumentName; readonly says: string }[] = [
  { name: 'report.pdf', says: 'Condition report, to print' },
  { name: 'report.html', says: 'Condition report, to read on a screen' },
  { name: 'listing.html', says: 'Listing' },
  { name: 'listing.txt', says: 'Listing as plain text' },
  { name: 'chapters.vtt', says: 'Chapters of the recording' },
];

export function Publish() {
  const { unit, packet } = useUnit();
  const [state, setState] = useState<'idle' | 'going' | 'gone'>('idle');
  const [problem, setProblem] = useState<Problem>();
  const { stop } = packet.report.tally;
  const gone = packet.record.publications.length;
  const publish = async (): Promise<void> => {
    setState('going');
    setProblem(undefined);
    const reply = await tell<PublishReply>(`/api/units/${unit}/publish`, {});
    if (!reply.ok) setProblem(reply.problem);
    setState(reply.ok ? 'gone' : 'idle');
  };
  const at = `/api/units/${unit}`;
  return (
    <section className="publish" aria-label="Publish">
      {stop > 0 && (
        <p className="row">
          <strong className="stop">
            {stop === 1 ? 'One thing' : `${stop} things`} could hurt somebody: this unit is not ready to show.
          </strong>{' '}
          The listing says so.
        </p>
      )}
      <div className="row">
        <button type="button" className="chief" disabled={state === 'going'} onClick={() => void publish()}>
          {state === 'going' ? 'Making the papers' : gone > 0 ? 'Publish it again' : 'Publish it'}
        </button>
        <a className="button" href={`${at}/packet.zip`} download>
          All papers in one file
        </a>
        <span role="status" className="small">
          {state === 'gone'
            ? 'Published; what went out is written into the log.'
            : gone > 0
              ? `Published ${gone === 1 ? 'once' : `${gone} times`} before.`
              : ''}
        </span>
      </div>
      {problem && <Trouble problem={problem} again={() => void publish()} />}
      <p className="row wide small papers">
        {papers.map((p) => (
          <a key={p.name} href={`${at}/documents/${p.name}`} download>
            {p.says}
          </a>
        ))}
      </p>
    </section>
  );
}
