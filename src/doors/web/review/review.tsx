// Why: what was heard is believed by nobody until a person has read it against the words; this is where that is quick.
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Link, useSearchParams } from 'wouter';
import { useChosen } from '../margin/use-chosen.ts';
import { useNarrow } from '../margin/use-narrow.ts';
import { usePlayer } from '../play/player.tsx';
import { useUnit } from '../unit/unit-context.ts';
import { KeysHelp } from './keys-help.tsx';
import { type Order, orderProposed, plainlySure, proposedOf } from './proposed.ts';
import { ProposedList } from './proposed-list.tsx';
import { Transcript } from './transcript.tsx';
import { useReviewKeys } from './use-review-keys.ts';

export function Review() {
  const { unit, entries, packet, rulings, rule, write } = useUnit();
  const player = usePlayer();
  const narrow = useNarrow();
  const [params] = useSearchParams();
  const [chosenId, choose] = useChosen();
  const [order, setOrder] = useState<Order>('doubtful first');
  const [fixing, setFixing] = useState(false);
  const [page, setPage] = useState<'list' | 'words'>('list');
  const help = useRef<HTMLDialogElement>(null);

  const all = useMemo(() => proposedOf(entries, packet, rulings), [entries, packet, rulings]);
  // The order stays put while things are accepted, so that the line under the thumb does not jump away; another order sorts anew.
  const sortedAs = useRef<{ order: Order; ids: readonly string[] }>({ order, ids: [] });
  const shown = useMemo(() => {
    const held = sortedAs.current;
    const byId = new Map(all.map((p) => [p.of.id, p]));
    const kept = held.order === order ? held.ids.flatMap((id) => byId.get(id) ?? []) : [];
    const fresh = orderProposed(all, order).filter((p) => !kept.includes(p));
    const next = kept.length > 0 && order !== 'in order' ? [...kept, ...fresh] : orderProposed(all, order);
    sortedAs.current = { order, ids: next.map((p) => p.of.id) };
    return order === 'only what waits'
      ? next.filter((p) => p.state === 'waits' || p.of.id === chosenId)
      : next;
  }, [all, order, chosenId]);
  const chosen = shown.find((p) => p.of.id === chosenId);

  const { goTo } = player;
  const at = params.get('at');
  useEffect(() => {
    if (at !== null && Number.isFinite(Number(at))) goTo(Number(at));
  }, [at, goTo]);

  const show = useCallback(
    (id: string) => {
      const o = all.find((p) => p.of.id === id)?.of;
      if (!o) return;
      setFixing(false);
      if (chosenId !== id) choose(id);
      if (o.source.from === 'speech' && !player.playing) goTo(o.source.start);
    },
    [all, chosenId, choose, goTo, player.playing],
  );
  const step = (by: number): void => {
    const i = shown.findIndex((p) => p.of.id === chosenId);
    const next = shown[Math.max(0, Math.min(shown.length - 1, i < 0 ? 0 : i + by))];
    if (next) show(next.of.id);
  };
  const decide = (ruling: 'accept' | 'reject'): void => {
    if (!chosen) return;
    rule(chosen.of, ruling);
    const i = shown.indexOf(chosen);
    const next =
      shown.slice(i + 1).find((p) => p.state === 'waits') ??
      shown.find((p) => p.state === 'waits' && p !== chosen);
    if (next) show(next.of.id);
  };
  useReviewKeys({
    next: () => step(1),
    previous: () => step(-1),
    accept: () => decide('accept'),
    reject: () => decide('reject'),
    fix: () => chosen && setFixing(true),
    play: () => {
      if (player.playing) player.pause();
      else if (chosen?.of.source.from === 'speech')
        player.play(chosen.of.source.start, chosen.of.source.end + 1.5);
      else player.play();
    },
    help: () => help.current?.showModal(),
  });

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
  const sure = all.filter(plainlySure);
  const list = (
    <ProposedList
      all={all}
      shown={shown}
      chosen={chosen}
      order={order}
      onOrder={setOrder}
      onShow={show}
      onDecide={decide}
      fixing={fixing}
      onFix={setFixing}
      sure={sure.length}
      onAcceptSure={() =>
        write<'ruling'>(
          ...sure.map((p) => ({
            kind: 'ruling' as const,
            on: p.of.id,
            ruling: 'accept' as const,
            why: 'accepted together with all that were heard surely',
          })),
        )
      }
      onHelp={() => help.current?.showModal()}
    />
  );
  const words = <Transcript all={all} chosen={chosenId} onShow={show} />;
  return (
    <>
      {narrow ? (
        <div className="lead">
          <div className="choices" role="radiogroup" aria-label="Show">
            {(['list', 'words'] as const).map((p) => (
              <label key={p}>
                <input type="radio" name="page" checked={page === p} onChange={() => setPage(p)} />
                <span>{p === 'list' ? 'What was heard' : 'All the words'}</span>
              </label>
            ))}
          </div>
          {page === 'list' ? list : words}
        </div>
      ) : (
        <div className="sheet with-margin review-sheet">
          <div className="lead">{words}</div>
          <section className="margin" aria-label="What was heard">
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
            <div className="held" tabIndex={0}>
              {list}
            </div>
          </section>
        </div>
      )}
      <KeysHelp ref={help} />
    </>
  );
}
