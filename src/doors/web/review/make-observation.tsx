// Why: what the hearing missed is made from the words themselves: they are offered, guessed at, and written down after a look.

import { useEffect, useState } from 'react';
import { factWords, subjectTitle } from '../../../published/plain-subject.ts';
import type { Observation } from '../../../said/entry.ts';
import { minutes as clock } from '../../words/minutes.ts';
import { ObservationForm } from '../add/observation-form.tsx';
import type { Draft } from '../kept/new-entry.ts';
import { useUnit } from '../unit/unit-context.ts';
import { type Guess, guessesOf } from './guess.ts';
import { Key } from './key.tsx';
import type { Picked } from './use-word-pick.ts';

interface Props {
  readonly of: Picked;
  /** What was heard last before the words. */
  readonly before: Observation | undefined;
  readonly onWrite: (draft: Draft<'observation'>) => void;
  readonly onDone: () => void;
}

export function MakeObservation({ of: picked, before, onWrite, onDone }: Props) {
  const { packet } = useUnit();
  const { kind } = packet.facts;
  const [guesses, setGuesses] = useState<readonly Guess[]>();
  const [at, setAt] = useState(0);
  useEffect(() => {
    let isWanted = true;
    void guessesOf(picked, picked.transcript.cues, before, kind).then((g) => isWanted && setGuesses(g));
    return () => {
      isWanted = false;
    };
  }, [picked, before, kind]);
  const guess = guesses?.[at];
  return (
    <section className="make" aria-label="An observation of these words">
      <h2>An observation of these words</h2>
      <blockquote className="quote">{picked.words}</blockquote>
      {guesses && guesses.length > 1 && (
        <div className="choices quiet" role="radiogroup" aria-label="What they may say">
          {guesses.map((g, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the guesses at these words do not change
            <label key={i}>
              <input type="radio" name="guess" checked={i === at} onChange={() => setAt(i)} />
              <span>{sayGuess(g)}</span>
            </label>
          ))}
        </div>
      )}
      {guesses ? (
        <>
          {!guess?.value && <p className="hint">Nothing was made out of these words: say what they mean.</p>}
          <ObservationForm
            key={at}
            quick
            {...(guess ? { subject: guess } : {})}
            spoken={{
              source: {
                from: 'speech',
                media: picked.transcript.media,
                start: picked.start,
                end: picked.end,
                words: picked.words,
              },
              walk: picked.transcript.walk,
            }}
            onWrite={onWrite}
            onDone={onDone}
          />
        </>
      ) : (
        <p className="soft">Listening to them</p>
      )}
    </section>
  );
}

const sayGuess = (g: Guess): string =>
  g.part === undefined || g.aspect === undefined || g.value === undefined
    ? 'something else'
    : `${subjectTitle({ part: g.part, place: g.place })}: ${factWords({ part: g.part, aspect: g.aspect, value: g.value })}`;

/** Offered as soon as words are chosen. */
export function MakeOffer({
  of: picked,
  onMake,
  onLeave,
}: {
  of: Picked;
  onMake: () => void;
  onLeave: () => void;
}) {
  return (
    // The choice of words must outlast the press of the button.
    <div className="make-offer" onPointerDown={(e) => e.preventDefault()}>
      <span className="small">
        <span className="num">{clock(picked.start)}</span> “{picked.words}”
      </span>
      <span className="row">
        <button type="button" className="chief" aria-keyshortcuts="m" onClick={onMake}>
          Make an observation <Key name="m" />
        </button>
        <button type="button" onClick={onLeave}>
          Leave them
        </button>
      </span>
    </div>
  );
}
