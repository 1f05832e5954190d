// Why: all the words as they were spoken, by station, with what was heard in them underlined.
import { useEffect, useMemo, useRef } from 'react';
import { stationOf } from '../../../catalogue/index.ts';
import { factWords, subjectTitle } from '../../../published/plain-subject.ts';
import type { EntryOf } from '../../../said/entry.ts';
import { minutes as clock } from '../../words/minutes.ts';
import { usePlayer } from '../play/player.tsx';
import { useUnit } from '../unit/unit-context.ts';
import { markCues, type Stretch } from './marks.ts';
import type { Proposed } from './proposed.ts';

interface Props {
  readonly all: readonly Proposed[];
  readonly chosen: string | undefined;
  readonly onShow: (id: string) => void;
}

export function Transcript({ all, chosen, onShow }: Props) {
  const { packet } = useUnit();
  const { transcripts } = packet.record;
  return (
    <div className="words">
      <p className="legend">
        Underlined is what was heard:{' '}
        <span className="meaning" data-polarity="good">
          good news
        </span>
        ,{' '}
        <span className="meaning" data-polarity="bad">
          bad news
        </span>
        , <span className="meaning">neither</span>,{' '}
        <span className="meaning" data-doubt="true">
          doubtful
        </span>
        .
      </p>
      {transcripts.map((t) => (
        <OneTranscript key={t.id} transcript={t} all={all} chosen={chosen} onShow={onShow} />
      ))}
    </div>
  );
}

function OneTranscript({ transcript, all, chosen, onShow }: Props & { transcript: EntryOf<'transcript'> }) {
  const { packet } = useUnit();
  const { second, play, goTo, recording } = usePlayer();
  const heard = useMemo(
    () =>
      all.filter(
        (p) =>
          p.of.source.from === 'speech' &&
          (p.of.source.media === transcript.media || p.of.walk === transcript.walk),
      ),
    [all, transcript],
  );
  const marked = useMemo(
    () =>
      markCues(
        transcript.cues,
        heard.map((p) => p.of),
      ),
    [transcript, heard],
  );
  const byId = useMemo(() => new Map(heard.map((p) => [p.of.id, p])), [heard]);
  const now = transcript.cues.findLastIndex((c) => c.start <= second + 0.05);
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const line = ref.current?.querySelector(`[data-cue="${now}"]`);
    if (!line) return;
    const { top, bottom } = line.getBoundingClientRect();
    const isInSight = top > innerHeight * 0.2 && bottom < innerHeight * 0.75;
    line.scrollIntoView({ block: isInSight ? 'nearest' : 'center' });
  }, [now]);
  const headAt = (i: number): string | undefined => {
    const cue = transcript.cues[i];
    const before = transcript.cues[i - 1];
    if (!cue) return undefined;
    const chapter = packet.chapters.findLast((c) => c.start <= cue.start + 0.01);
    const earlier = before && packet.chapters.findLast((c) => c.start <= before.start + 0.01);
    return chapter && chapter !== earlier ? (stationOf(chapter.station)?.name ?? chapter.title) : undefined;
  };
  return (
    <div ref={ref}>
      {transcript.cues.map((c, i) => {
        const head = headAt(i);
        return (
          <div key={`${c.start}-${c.end}`}>
            {head && <h2 className="station">{head}</h2>}
            <div className="cue" data-cue={i} data-now={i === now}>
              <button
                type="button"
                className="plain"
                aria-label={`${recording ? 'Play' : 'Go to'} ${clock(c.start)}`}
                onClick={() => (recording ? play(c.start) : goTo(c.start))}
              >
                {clock(c.start)}
              </button>
              <p>
                {(marked[i] ?? []).map((s, n) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: the stretches of a line are its text in order
                  <Marked key={n} stretch={s} byId={byId} chosen={chosen} onShow={onShow} />
                ))}
              </p>
            </div>
          </div>
        );
      })}
    </div>
  );
}

interface MarkedProps {
  readonly stretch: Stretch;
  readonly byId: ReadonlyMap<string, Proposed>;
  readonly chosen: string | undefined;
  readonly onShow: (id: string) => void;
}

function Marked({ stretch, byId, chosen, onShow }: MarkedProps) {
  const found = stretch.heard.flatMap((id) => byId.get(id) ?? []);
  const first =
    found.find((p) => p.of.id === chosen) ?? found.find((p) => p.of.polarity === 'bad') ?? found[0];
  if (!first) return stretch.text;
  // Choosing the same words again goes on to the next thing heard in them.
  const next = found[(found.findIndex((p) => p.of.id === chosen) + 1) % found.length] ?? first;
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: every mark is also a line of the list, which the keyboard reaches
    <mark
      data-polarity={first.of.polarity}
      data-doubt={first.calls.length > 0}
      data-state={first.state}
      data-chosen={first.of.id === chosen}
      title={found.map((p) => `${subjectTitle(p.of)}: ${factWords(p.of)}`).join('\n')}
      onClick={() => onShow(next.of.id)}
    >
      {stretch.text}
    </mark>
  );
}
