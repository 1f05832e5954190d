// Why: one observation as evidence: the words, the second, the picture, who and how sure; and what can be done about it here.
import { useState } from 'react';
import { plainDay } from '../../../published/plain-day.ts';
import { factWords, subjectTitle } from '../../../published/plain-subject.ts';
import type { Observation } from '../../../said/entry.ts';
import { dayOf } from '../../../units/day.ts';
import { ObservationForm } from '../add/observation-form.tsx';
import { PlayButton } from '../play/play-button.tsx';
import { useUnit } from '../unit/unit-context.ts';
import { howSure } from './how-sure.ts';
import { Photo } from './photo.tsx';

const came: Record<Observation['source']['from'], string> = {
  speech: 'spoken',
  typed: 'written down',
  photo: 'seen in a photo',
  instrument: 'read from an instrument',
  document: 'read from a paper',
};

export function Said({ of: o, withSubject }: { of: Observation; withSubject?: boolean }) {
  const { rule, rulings } = useUnit();
  const [correcting, setCorrecting] = useState(false);
  const ruling = rulings.get(o.id)?.ruling;
  const { source } = o;
  const note = [source.from !== 'speech' && 'note' in source ? source.note : undefined, o.note]
    .filter(Boolean)
    .join('; ');
  return (
    <div className="said">
      {source.from === 'speech' ? (
        <>
          <blockquote className="quote">{source.words}</blockquote>
          <div className="row">
            <PlayButton start={source.start} end={source.end} />
          </div>
        </>
      ) : (
        <p className="quote">{factWords(o)}</p>
      )}
      {source.from === 'photo' && (
        <Photo media={source.media} region={source.region} says={`${subjectTitle(o)}: ${factWords(o)}`} />
      )}
      <p className="from">
        {withSubject && `${subjectTitle(o)}: ${factWords(o)}. `}
        {source.from === 'document'
          ? `Read from ${source.title}`
          : came[source.from].replace(/^./, (c) => c.toUpperCase())}{' '}
        by {o.by}, {plainDay(dayOf(o.at))}; {howSure(o.sure)}
        {o.hedged && ', said with a doubt'}
        {o.saidBy && `, as told by ${o.saidBy}`}
        {ruling === 'accept' && '; reviewed'}.{note && ` ${note}`}
      </p>
      <div className="row wide small">
        <button
          type="button"
          className="text"
          aria-expanded={correcting}
          onClick={() => setCorrecting(!correcting)}
        >
          Correct it
        </button>
        {ruling !== 'accept' && (
          <button type="button" className="text" onClick={() => rule(o, 'accept')}>
            Accept it
          </button>
        )}
        <button type="button" className="text" onClick={() => rule(o, 'reject')}>
          Reject it
        </button>
      </div>
      {correcting && <ObservationForm replaces={o} onDone={() => setCorrecting(false)} />}
    </div>
  );
}
