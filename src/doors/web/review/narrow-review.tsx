// Why: on a phone the words and the list take turns, and neither loses its place: what is in focus goes along, with its buttons.
import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import { factWords, subjectTitle } from '../../../published/plain-subject.ts';
import { ScreenPlace } from '../play/screen.tsx';
import { Decide, type Decisions } from './decide.tsx';
import type { Proposed } from './proposed.ts';

interface Props extends Decisions {
  readonly list: ReactNode;
  readonly words: ReactNode;
  /** What is being made of chosen words. */
  readonly maker: ReactNode;
  readonly last: ReactNode;
  readonly chosen: Proposed | undefined;
  readonly breath: number;
  readonly fix: ReactNode;
}
type Page = 'list' | 'words';

/** How far each page was scrolled, and what was in focus then: another focus is brought into sight instead. */
type Places = Partial<Record<Page, { readonly top: number; readonly on: string | undefined }>>;

export function NarrowReview({ list, words, maker, last, chosen, breath, fix, ...decisions }: Props) {
  const [page, setPage] = useState<Page>('list');
  const ref = useRef<HTMLDivElement>(null);
  const places = useRef<Places>({});
  const on = chosen?.of.id;
  const turn = (to: Page): void => {
    const top = ref.current?.closest('.scroll')?.scrollTop ?? 0;
    places.current = { ...places.current, [page]: { top, on } };
    setPage(to);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: only turning the page asks for its place
  useLayoutEffect(() => {
    const was = places.current[page];
    const scroll = ref.current?.closest('.scroll');
    if (was && was.on === on) scroll?.scrollTo(0, was.top);
    else
      ref.current
        ?.querySelector(page === 'words' ? 'mark[data-chosen="true"]' : 'li[data-here="true"]')
        ?.scrollIntoView({ block: 'center' });
  }, [page]);
  return (
    <div className="review-narrow" ref={ref}>
      <div className="turn">
        <div className="choices" role="radiogroup" aria-label="Show">
          {(['list', 'words'] as const).map((p) => (
            <label key={p}>
              <input type="radio" name="page" checked={page === p} onChange={() => turn(p)} />
              <span>{p === 'list' ? 'What was heard' : 'All the words'}</span>
            </label>
          ))}
        </div>
        <ScreenPlace />
      </div>
      <div className="lead">{page === 'list' ? list : words}</div>
      <div className="dock">
        {maker}
        {page === 'words' && !maker && chosen && (
          <div className="docked">
            <p>
              <strong>{subjectTitle(chosen.of)}</strong>{' '}
              <span
                className="meaning"
                data-polarity={chosen.of.polarity}
                data-doubt={chosen.calls.length > 0}
                data-state={chosen.state}
              >
                {factWords(chosen.of)}
              </span>{' '}
              {chosen.state !== 'waits' && <span className="soft small">{chosen.state}</span>}
            </p>
            <Decide of={chosen} breath={breath} {...decisions}>
              {fix}
            </Decide>
          </div>
        )}
        {last}
      </div>
    </div>
  );
}
