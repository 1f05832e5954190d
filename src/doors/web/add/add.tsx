// Why: how anything gets in: the files of a walk, or one observation written by hand.
import { useEffect, useRef, useState } from 'react';
import { useSearchParams } from 'wouter';
import { hasWriter } from '../kept/writer.ts';
import { WriterField } from '../kept/writer-field.tsx';
import { useUnit } from '../unit/unit-context.ts';
import { DropFiles } from './drop-files.tsx';
import { ObservationForm } from './observation-form.tsx';
import { RecentlyWritten } from './recently-written.tsx';

export function Add() {
  const { packet } = useUnit();
  const [params, setParams] = useSearchParams();
  const again = packet.record.standing.get(params.get('replaces') ?? '');
  const subject = {
    part: params.get('part') ?? undefined,
    place: params.get('place') ?? undefined,
    aspect: params.get('aspect') ?? undefined,
  };
  const [named] = useState(hasWriter);
  const byHand = useRef<HTMLElement>(null);
  const asked = params.toString();
  useEffect(() => {
    if (asked !== '') byHand.current?.scrollIntoView({ block: 'start' });
  }, [asked]);
  const hasWalk = packet.record.transcripts.length > 0;
  return (
    <div className="lead two-columns">
      <section aria-labelledby="files">
        <h2 id="files">{hasWalk ? 'Add files of another walk' : 'Start here: the files of your walk'}</h2>
        <DropFiles />
      </section>
      <section aria-labelledby="by-hand" ref={byHand}>
        <h2 id="by-hand">{again ? 'Measure or look again' : 'Write down one thing you saw or measured'}</h2>
        {!named && <WriterField />}
        <ObservationForm
          key={`${again?.id}${subject.part}${subject.place}${subject.aspect}`}
          subject={subject}
          {...(again ? { replaces: again } : {})}
          {...(again || subject.part ? { onDone: () => setParams({}, { replace: true }) } : {})}
        />
        <RecentlyWritten />
      </section>
    </div>
  );
}
