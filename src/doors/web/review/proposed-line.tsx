// Why: one thing that was heard, in a line: what it means, what makes one stop at it, and when it was said.
import { memo, useEffect, useRef } from 'react';
import { factWords, subjectTitle } from '../../../published/plain-subject.ts';
import { minutes as clock } from '../../words/minutes.ts';
import { howSure } from '../margin/how-sure.ts';
import type { Proposed } from './proposed.ts';

interface Props {
  readonly of: Proposed;
  readonly chosen: boolean;
  /** Its number in the breath that is in focus. */
  readonly number: number | undefined;
  /** The line above names the same part and place already. */
  readonly same: boolean;
  readonly onShow: (id: string) => void;
}

export const ProposedLine = memo(
  function ProposedLine({ of: p, chosen, number, same, onShow }: Props) {
    const ref = useRef<HTMLButtonElement>(null);
    useEffect(() => {
      if (chosen) ref.current?.closest('li')?.scrollIntoView({ block: 'nearest' });
    }, [chosen]);
    const { source } = p.of;
    return (
      <button
        ref={ref}
        type="button"
        className="line heard"
        data-of={p.of.id}
        aria-expanded={chosen}
        data-state={p.state}
        onClick={() => onShow(p.of.id)}
      >
        <span className="nth num" aria-hidden="true">
          {number}
        </span>
        <span>
          <span className={same ? 'name unseen' : 'name'}>{subjectTitle(p.of)}</span>{' '}
          <span
            className="meaning"
            data-polarity={p.of.polarity}
            data-doubt={p.calls.length > 0}
            data-state={p.state}
          >
            {factWords(p.of)}
          </span>
          {p.calls.length > 0 && (
            <span className="calls">
              {p.calls.map((c) => (
                <span key={c}>{c}</span>
              ))}
            </span>
          )}
        </span>
        <span className="right small">
          {p.state === 'waits' ? (
            <span className="soft">{howSure(p.of.sure)}</span>
          ) : (
            <span className={p.state === 'accepted' ? 'sound' : 'soft'}>{p.state}</span>
          )}
          <span className="num soft">{source.from === 'speech' ? clock(source.start) : ''}</span>
        </span>
      </button>
    );
  },
  (a, b) =>
    a.of.of === b.of.of &&
    a.of.state === b.of.state &&
    a.of.calls.join() === b.of.calls.join() &&
    a.chosen === b.chosen &&
    a.number === b.number &&
    a.same === b.same &&
    a.onShow === b.onShow,
);
