// Why: one thing that was heard: what it means, how sure, its words and second, and accept, fix, reject under the thumb.
import { type ReactNode, useEffect, useRef } from 'react';
import { factWords, subjectTitle } from '../../../published/plain-subject.ts';
import { minutes as clock } from '../../words/minutes.ts';
import { howSure } from '../margin/how-sure.ts';
import { PlayButton } from '../play/play-button.tsx';
import type { Proposed } from './proposed.ts';

interface Props {
  readonly of: Proposed;
  readonly chosen: boolean;
  readonly onShow: (id: string) => void;
  readonly onDecide: (ruling: 'accept' | 'reject') => void;
  readonly onFix: () => void;
  readonly children: ReactNode;
}

const stateWords: Record<Proposed['state'], string> = {
  waits: '',
  accepted: 'accepted',
  rejected: 'rejected',
  replaced: 'replaced',
};

export function ProposedLine({ of: p, chosen, onShow, onDecide, onFix, children }: Props) {
  const ref = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (chosen) ref.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  const { source } = p.of;
  return (
    <li ref={ref}>
      <button type="button" className="line two" aria-expanded={chosen} onClick={() => onShow(p.of.id)}>
        <span>
          <span className="name">{subjectTitle(p.of)}</span>
          <span
            className="meaning"
            data-polarity={p.of.polarity}
            data-doubt={p.calls.length > 0}
            data-state={p.state}
          >
            {factWords(p.of)}
          </span>
          <span className="calls">
            {p.calls.map((c) => (
              <span key={c} className="stop">
                {c}
              </span>
            ))}
            {!p.calls.includes('a guess') && <span className="soft">{howSure(p.of.sure)}</span>}
            {p.state !== 'waits' && (
              <span className={p.state === 'accepted' ? 'sound' : 'soft'}>{stateWords[p.state]}</span>
            )}
          </span>
        </span>
        <span className="num small soft">{source.from === 'speech' ? clock(source.start) : ''}</span>
      </button>
      {chosen && (
        <div className="under-line">
          {source.from === 'speech' && (
            <>
              <blockquote className="quote">{source.words}</blockquote>
              <PlayButton start={source.start} end={source.end} />
            </>
          )}
          <div className="thumb-bar">
            <button type="button" className="chief" onClick={() => onDecide('accept')}>
              Accept
            </button>
            <button type="button" aria-pressed={Boolean(children)} onClick={onFix}>
              Fix
            </button>
            <button type="button" onClick={() => onDecide('reject')}>
              Reject
            </button>
          </div>
          {children}
        </div>
      )}
    </li>
  );
}
