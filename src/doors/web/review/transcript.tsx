// Why: all the words as they were spoken, by station, with what was heard in them underlined.
import { memo, useEffect, useMemo, useRef } from 'react';
import { stationOf } from '../../../catalogue/index.ts';
import { factWords, subjectTitle } from '../../../published/plain-subject.ts';
import type { Cue, EntryOf } from '../../../said/entry.ts';
import { minutes as clock } from '../../words/minutes.ts';
import { usePlayer } from '../play/player.tsx';
import { useUnit } from '../unit/unit-context.ts';
import { markCues, type Stretch } from './marks.ts';
import type { Proposed } from './proposed.ts';

interface Props {
  readonly all: readonly Proposed[];
  readonly chosen: string | undefined;
  /** What is ruled on together with the chosen one. */
  readonly breath: ReadonlySet<string>;
  readonly onShow: (id: string) => void;
}

export function Transcript(props: Props) {
  const { packet } = useUnit();
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
        ,{' '}
        <span className="meaning" data-state="accepted">
          accepted
        </span>
        . Choose any words to make an observation of them.
      </p>
      {packet.record.transcripts.map((t) => (
        <OneTranscript key={t.id} transcript={t} {...props} />
      ))}
    </div>
  );
}

function OneTranscript({
  transcript,
  all,
  chosen,
  breath,
  onShow,
}: Props & { transcript: EntryOf<'transcript'> }) {
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
  const ids = heard.map((p) => p.of.id).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: where the marks stand changes only with what is marked, not with rulings
  const marked = useMemo(
    () =>
      markCues(
        transcript.cues,
        heard.map((p) => p.of),
      ),
    [transcript, ids],
  );
  const byId = useMemo(() => new Map(heard.map((p) => [p.of.id, p])), [heard]);
  const heads = useMemo(() => headsOf(transcript.cues, packet.chapters), [transcript, packet.chapters]);
  const now = transcript.cues.findLastIndex((c) => c.start <= second + 0.05);
  const ref = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another thing in focus also asks to be brought into sight
  useEffect(() => {
    const line =
      ref.current?.querySelector('mark[data-chosen="true"]') ??
      ref.current?.querySelector(`[data-cue="${now}"]`);
    if (!line) return;
    const pane = line.closest('.words-pane') ?? document.documentElement;
    const { top, bottom } = line.getBoundingClientRect();
    const { top: above, bottom: below } = pane.getBoundingClientRect();
    const edge = Math.min(below, innerHeight);
    const room = edge - Math.max(0, above);
    const isInSight = top > Math.max(0, above) + room * 0.15 && bottom < edge - room * 0.3;
    if (!isInSight) line.scrollIntoView({ block: 'center' });
  }, [now, chosen]);
  const go = (to: number): void => (recording ? play(to) : goTo(to));
  const goRef = useRef(go);
  goRef.current = go;
  const still = useMemo(() => (to: number) => goRef.current(to), []);
  return (
    <div ref={ref}>
      {transcript.cues.map((c, i) => {
        const stretches = marked[i] ?? noStretches;
        const here = stretches.flatMap((s) => s.heard).map((id) => byId.get(id));
        return (
          <CueLine
            key={`${c.start}-${c.end}-${c.text.length}`}
            transcript={transcript.id}
            index={i}
            cue={c}
            head={heads[i]}
            stretches={stretches}
            byId={byId}
            looks={here
              .map((p) => `${p?.state}${p?.calls.length}${p?.of.id === chosen}${breath.has(p?.of.id ?? '')}`)
              .join()}
            now={i === now}
            canPlay={recording !== undefined}
            chosen={chosen}
            breath={breath}
            onGo={still}
            onShow={onShow}
          />
        );
      })}
    </div>
  );
}

const noStretches: readonly Stretch[] = [];

/** The name of a station, at the cue with which the walk came to it. */
function headsOf(
  cues: readonly Cue[],
  chapters: readonly { readonly start: number; readonly station: string; readonly title: string }[],
): readonly (string | undefined)[] {
  let before: string | undefined;
  return cues.map((cue) => {
    const chapter = chapters.findLast((c) => c.start <= cue.start + 0.01);
    const is = chapter && `${chapter.start}${chapter.station}`;
    const isNew = is !== before;
    before = is;
    return chapter && isNew ? (stationOf(chapter.station)?.name ?? chapter.title) : undefined;
  });
}

interface CueProps {
  readonly transcript: string;
  readonly index: number;
  readonly cue: Cue;
  readonly head: string | undefined;
  readonly stretches: readonly Stretch[];
  readonly byId: ReadonlyMap<string, Proposed>;
  /** How its marks look; it is drawn again when that changes. */
  readonly looks: string;
  readonly now: boolean;
  readonly canPlay: boolean;
  readonly chosen: string | undefined;
  readonly breath: ReadonlySet<string>;
  readonly onGo: (second: number) => void;
  readonly onShow: (id: string) => void;
}

const CueLine = memo(
  function CueLine(p: CueProps) {
    return (
      <div>
        {p.head && <h2 className="station">{p.head}</h2>}
        <div className="cue" data-cue={p.index} data-now={p.now}>
          <button
            type="button"
            className="plain"
            aria-label={`${p.canPlay ? 'Play' : 'Go to'} ${clock(p.cue.start)}`}
            onClick={() => p.onGo(p.cue.start)}
          >
            {clock(p.cue.start)}
          </button>
          <p data-transcript={p.transcript} data-cue-text={p.index}>
            {p.stretches.map((s, n) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the stretches of a line are its text in order
              <Marked key={n} stretch={s} {...p} />
            ))}
          </p>
        </div>
      </div>
    );
  },
  (a, b) =>
    a.looks === b.looks &&
    a.now === b.now &&
    a.head === b.head &&
    a.stretches === b.stretches &&
    a.canPlay === b.canPlay &&
    a.onShow === b.onShow,
);

function Marked({
  stretch,
  byId,
  chosen,
  breath,
  onShow,
}: Pick<CueProps, 'byId' | 'chosen' | 'breath' | 'onShow'> & { stretch: Stretch }) {
  const found = stretch.heard.flatMap((id) => byId.get(id) ?? []);
  const first =
    found.find((p) => p.of.id === chosen) ??
    found.find((p) => p.state === 'waits' && p.calls.length > 0) ??
    found.find((p) => p.of.polarity === 'bad') ??
    found[0];
  if (!first) return stretch.text;
  // Choosing the same words again goes on to the next thing heard in them.
  const next = found[(found.findIndex((p) => p.of.id === chosen) + 1) % found.length] ?? first;
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: every mark is also a line of the list, which the keyboard reaches
    <mark
      data-polarity={first.of.polarity}
      data-doubt={first.calls.length > 0}
      data-state={found.some((p) => p.state === 'waits') ? 'waits' : first.state}
      data-chosen={first.of.id === chosen}
      data-breath={found.some((p) => breath.has(p.of.id))}
      title={found.map((p) => `${subjectTitle(p.of)}: ${factWords(p.of)}`).join('\n')}
      onClick={() => {
        if (getSelection()?.isCollapsed !== false) onShow(next.of.id);
      }}
    >
      {stretch.text}
    </mark>
  );
}
