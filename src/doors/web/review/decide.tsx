// Why: what is in focus is decided here: its words, what contradicts it, and accept, fix, reject under the thumb.

import type { ReactNode } from 'react';
import { factWords } from '../../../published/plain-subject.ts';
import type { Observation } from '../../../said/entry.ts';
import { minutes as clock } from '../../words/minutes.ts';
import { PlayButton } from '../play/play-button.tsx';
import { Key } from './key.tsx';
import type { Proposed } from './proposed.ts';

export interface Decisions {
  readonly onDecide: (ruling: 'accept' | 'reject') => void;
  readonly onBreath: () => void;
  readonly onOnly: () => void;
  readonly onFix: () => void;
}

interface Props extends Decisions {
  readonly of: Proposed;
  /** Waiting with it in the same breath, itself among them. */
  readonly breath: number;
  readonly children?: ReactNode;
}

const came = (o: Observation): string =>
  o.source.from === 'speech'
    ? `said at ${clock(o.source.start)}`
    : {
        typed: 'written down',
        photo: 'seen in a photo',
        instrument: 'read from an instrument',
        document: 'read from a paper',
      }[o.source.from];

/** Said twice in one breath is told once. */
const once = (all: readonly Observation[]): readonly Observation[] =>
  all.filter((o, i) => all.findIndex((x) => factWords(x) === factWords(o) && came(x) === came(o)) === i);

export function Decide({ of: p, breath, onDecide, onBreath, onOnly, onFix, children }: Props) {
  const { source } = p.of;
  return (
    <div className="under-line decide" data-against={p.against.map((o) => o.id).join(' ')}>
      {source.from === 'speech' && (
        <div className="words-line">
          <blockquote className="quote">{source.words}</blockquote>
          <PlayButton start={source.start} end={source.end} />
        </div>
      )}
      {once(p.instead).map((o) => (
        <p key={o.id} className="versus">
          Instead of <strong>{factWords(o)}</strong>, {came(o)}
        </p>
      ))}
      {once(p.against).map((o) => (
        <p key={o.id} className="versus">
          Against <strong>{factWords(o)}</strong>, {came(o)}
          {o.source.from === 'speech' && <> (“{o.source.words}”)</>}
        </p>
      ))}
      <div className="thumb-bar">
        <button type="button" className="chief" aria-keyshortcuts="a" onClick={() => onDecide('accept')}>
          Accept <Key name="a" />
        </button>
        <button type="button" aria-pressed={Boolean(children)} aria-keyshortcuts="f" onClick={onFix}>
          Fix <Key name="f" />
        </button>
        <button type="button" aria-keyshortcuts="r" onClick={() => onDecide('reject')}>
          Reject <Key name="r" />
        </button>
      </div>
      {(breath > 1 || p.against.length > 0) && (
        <div className="thumb-bar more">
          {breath > 1 && (
            <button type="button" aria-keyshortcuts="b" onClick={onBreath}>
              Accept all {breath} of this breath <Key name="b" />
            </button>
          )}
          {p.against.length > 0 && (
            <button type="button" aria-keyshortcuts="o" onClick={onOnly}>
              Only this is right <Key name="o" />
            </button>
          )}
        </div>
      )}
      {children}
    </div>
  );
}
