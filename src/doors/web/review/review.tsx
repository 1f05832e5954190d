// Why: what was heard is believed by nobody until a person has read it against the words; this is where that is quick.
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Link, useSearchParams } from 'wouter';
import { subjectTitle } from '../../../published/plain-subject.ts';
import type { Observation } from '../../../said/entry.ts';
import { ObservationForm } from '../add/observation-form.tsx';
import { useNarrow } from '../margin/use-narrow.ts';
import { usePlayer } from '../play/player.tsx';
import { PlayerPanel } from '../play/player-panel.tsx';
import { useUnit } from '../unit/unit-context.ts';
import { AcceptSure } from './accept-sure.tsx';
import { KeysHelp } from './keys-help.tsx';
import { LastStep } from './last-step.tsx';
import { MakeObservation, MakeOffer } from './make-observation.tsx';
import { NarrowReview } from './narrow-review.tsx';
import { isCalm, type Proposed, plainlySure, proposedOf, together } from './proposed.ts';
import { ProposedList } from './proposed-list.tsx';
import { Transcript } from './transcript.tsx';
import { useFocus } from './use-focus.ts';
import { useReviewKeys } from './use-review-keys.ts';
import { useRulings } from './use-rulings.ts';
import { type Picked, useWordPick } from './use-word-pick.ts';

const nobody: ReadonlySet<string> = new Set();
const title = (o: Observation): string => subjectTitle(o);

export function Review() {
  const { unit, entries, packet, rulings } = useUnit();
  const player = usePlayer();
  const narrow = useNarrow();
  const [params] = useSearchParams();
  const [fixing, setFixing] = useState(false);
  const [making, setMaking] = useState<Picked>();
  const help = useRef<HTMLDialogElement>(null);
  const sureAsk = useRef<HTMLDialogElement>(null);
  const did = useRulings();
  const words = useWordPick(packet.record.transcripts);

  const all = useMemo(() => proposedOf(entries, packet, rulings), [entries, packet, rulings]);
  const focus = useFocus(all);
  const { shown, chosen, choose } = focus;
  const breath = useMemo(
    () => together(shown).find((g) => chosen !== undefined && g.includes(chosen)) ?? [],
    [shown, chosen],
  );
  const breathIds = useMemo(() => new Set(breath.map((p) => p.of.id)), [breath]);
  const sure = all.filter(plainlySure);

  const { goTo } = player;
  const at = params.get('at');
  useEffect(() => {
    if (at !== null && Number.isFinite(Number(at))) goTo(Number(at));
  }, [at, goTo]);

  const show = (id: string): void => {
    const o = all.find((p) => p.of.id === id)?.of;
    setFixing(false);
    choose(id);
    if (o?.source.from === 'speech' && !player.playing) goTo(o.source.start);
  };
  const showRef = useRef(show);
  showRef.current = show;
  const onShow = useCallback((id: string) => showRef.current(id), []);

  /** Rules and goes on to the next that waits. */
  const settle = (
    what: readonly { readonly of: Observation; readonly ruling: 'accept' | 'reject' }[],
    says: string,
    from: Proposed | undefined = chosen,
  ): void => {
    did.ruleOn(what, says, chosen?.of.id);
    const next = focus.waitsAfter(from, new Set(what.map((w) => w.of.id)));
    if (next) show(next.of.id);
    else setFixing(false);
  };
  const decide = (ruling: 'accept' | 'reject', p: Proposed | undefined = chosen): void => {
    if (!p) return;
    const says =
      ruling === 'accept'
        ? `Accepted: ${title(p.of)}.`
        : `Rejected: ${title(p.of)}. It stays in the log; nothing follows from it any more.`;
    if (p === chosen) settle([{ of: p.of, ruling }], says);
    else did.ruleOn([{ of: p.of, ruling }], says, chosen?.of.id);
  };
  const acceptBreath = (): void => {
    const waiting = breath.filter(isCalm);
    if (waiting.length === 0) {
      decide('accept');
      return;
    }
    const says =
      waiting.length === 1
        ? `Accepted: ${title(waiting[0]!.of)}.`
        : `Accepted ${waiting.length} of one breath.`;
    settle(
      waiting.map((p) => ({ of: p.of, ruling: 'accept' })),
      says,
      breath.at(-1),
    );
  };
  const only = (): void => {
    if (!chosen || chosen.against.length === 0) return;
    settle(
      [
        { of: chosen.of, ruling: 'accept' },
        ...chosen.against.map((of) => ({ of, ruling: 'reject' as const })),
      ],
      `Accepted: ${title(chosen.of)}; rejected what contradicts it.`,
    );
  };
  const undo = (): void => {
    const back = did.undo();
    if (back) show(back);
  };
  const step = (by: number): void => {
    const i = chosen ? shown.indexOf(chosen) : -1;
    const next = shown[Math.max(0, Math.min(shown.length - 1, i + by))];
    if (next) show(next.of.id);
  };
  const make = (): void => {
    if (!words.picked) return;
    setFixing(false);
    setMaking(words.picked);
  };
  const marked = (): Element | null =>
    document.querySelector('.words mark[data-chosen="true"]') ??
    document.querySelector('.words [data-now="true"]');
  const source = chosen?.of.source;
  useReviewKeys(
    {
      next: () => step(1),
      previous: () => step(-1),
      accept: () => decide('accept'),
      breath: acceptBreath,
      reject: () => decide('reject'),
      only,
      fix: () => chosen && setFixing(true),
      sure: () => sureAsk.current?.showModal(),
      undo,
      play: () => {
        if (player.playing) player.pause();
        else if (source?.from === 'speech') player.play(source.start, source.end + 1.5);
        else player.play();
      },
      playOn: () => player.play(source?.from === 'speech' ? source.start : undefined),
      words: () => words.begin(marked() ?? document.querySelector('.words .cue')),
      make,
      help: () => help.current?.showModal(),
    },
    (n) => decide('reject', breath[n - 1]),
    (e) => words.key(e, marked),
  );

  if (packet.record.transcripts.length === 0) {
    return (
      <div className="lead">
        <h2>There are no words to review yet.</h2>
        <p>
          Drop the transcript of a walk first. What is heard in it is proposed here, and believed when you
          have accepted it.
        </p>
        <Link className="button chief" href={`/unit/${unit}/add`}>
          Add the files of a walk
        </Link>
      </div>
    );
  }
  const decisions = {
    onDecide: (ruling: 'accept' | 'reject') => decide(ruling),
    onBreath: acceptBreath,
    onOnly: only,
    onFix: () => setFixing(!fixing),
  };
  const fix = fixing && chosen && (
    <ObservationForm
      key={chosen.of.id}
      replaces={chosen.of}
      quick
      onWrite={(draft) => {
        did.add(draft, `Fixed: ${title(chosen.of)}.`, chosen.of.id);
        const next = focus.waitsAfter(chosen, new Set([chosen.of.id]));
        if (next) show(next.of.id);
      }}
      onDone={() => setFixing(false)}
    />
  );
  const maker = making ? (
    <MakeObservation
      key={making.words + making.start}
      of={making}
      before={all.findLast((p) => p.of.source.from === 'speech' && p.of.source.start <= making.start)?.of}
      onWrite={(draft) => {
        did.add(
          draft,
          `Written down: ${subjectTitle({ part: draft.part, place: draft.place })}.`,
          chosen?.of.id,
        );
        words.clear();
      }}
      onDone={() => setMaking(undefined)}
    />
  ) : (
    words.picked && <MakeOffer of={words.picked} onMake={make} onLeave={words.clear} />
  );
  const list = (
    <ProposedList
      all={all}
      shown={shown}
      chosen={chosen}
      order={focus.order}
      onOrder={focus.sort}
      onShow={onShow}
      sure={sure.length}
      onSure={() => sureAsk.current?.showModal()}
      onHelp={() => help.current?.showModal()}
      {...decisions}
    >
      {fix || undefined}
    </ProposedList>
  );
  const transcript = (
    <Transcript
      all={all}
      chosen={chosen?.of.id}
      breath={breath.length > 1 ? breathIds : nobody}
      onShow={onShow}
    />
  );
  const last = <LastStep says={did.says} steps={did.steps} onUndo={undo} />;
  return (
    <>
      {narrow ? (
        <NarrowReview
          list={list}
          words={transcript}
          maker={maker}
          last={last}
          chosen={chosen}
          breath={breath.filter(isCalm).length}
          fix={fix || undefined}
          {...decisions}
        />
      ) : (
        <div className="review">
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
          <section className="words-pane" aria-label="The words" tabIndex={0}>
            {transcript}
          </section>
          <section className="heard-pane" aria-label="What was heard">
            <PlayerPanel />
            {maker}
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
            <div className="held" tabIndex={0}>
              {list}
            </div>
            {last}
          </section>
        </div>
      )}
      <KeysHelp ref={help} />
      <AcceptSure
        ref={sureAsk}
        count={sure.length}
        onAccept={() => {
          did.ruleOn(
            sure.map((p) => ({ of: p.of, ruling: 'accept' })),
            `Accepted ${sure.length} that were heard surely.`,
            chosen?.of.id,
            'accepted together with all that were heard surely',
          );
          focus.sort(focus.order);
        }}
      />
    </>
  );
}
