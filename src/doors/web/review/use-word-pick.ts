// Why: the browser's own selection is what mouse, finger and keyboard all make; it is read as words of a transcript, and moved by words.
import { useCallback, useEffect, useMemo, useState } from 'react';
import type { EntryOf } from '../../../said/entry.ts';
import {
  type Chosen,
  chosenOf,
  endsOf,
  movePick,
  type Pick,
  pickBetween,
  type Word,
  wordsOf,
} from './word-pick.ts';

type Transcript = EntryOf<'transcript'>;
export interface Picked extends Chosen {
  readonly transcript: Transcript;
  readonly pick: Pick;
}

interface Spot {
  readonly transcript: string;
  readonly cue: number;
  readonly at: number;
}

/** Where in a transcript a point of the page is. */
function spotOf(node: Node | null, offset: number): Spot | undefined {
  const element = node instanceof Element ? node : node?.parentElement;
  const line = element?.closest<HTMLElement>('[data-cue-text]');
  if (!line || !node) return undefined;
  const range = document.createRange();
  range.setStart(line, 0);
  range.setEnd(node, offset);
  return {
    transcript: line.dataset.transcript ?? '',
    cue: Number(line.dataset.cueText),
    at: range.toString().length,
  };
}

/** The point of the page at a letter of a cue. */
function pointAt(transcript: string, cue: number, at: number): readonly [Node, number] | undefined {
  const line = document.querySelector(`[data-transcript="${transcript}"][data-cue-text="${cue}"]`);
  if (!line) return undefined;
  const texts = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
  let left = at;
  for (let n = texts.nextNode(); n; n = texts.nextNode()) {
    const length = n.nodeValue?.length ?? 0;
    if (left <= length) return [n, left];
    left -= length;
  }
  return undefined;
}

function select(transcript: string, words: readonly Word[], pick: Pick): void {
  const [first, last] = endsOf(pick).map((i) => words[i]);
  const from = first && pointAt(transcript, first.cue, first.from);
  const to = last && pointAt(transcript, last.cue, last.to);
  if (!from || !to) return;
  getSelection()?.setBaseAndExtent(from[0], from[1], to[0], to[1]);
  const at = words[pick.focus];
  document
    .querySelector(`[data-transcript="${transcript}"][data-cue-text="${at?.cue}"]`)
    ?.scrollIntoView({ block: 'nearest' });
}

export interface WordPick {
  readonly picked: Picked | undefined;
  /** Begins with the words of an element of a transcript, or with what is there already. */
  readonly begin: (at: Element | null) => boolean;
  /** Takes an arrow or Escape while words are chosen; Shift and an arrow also begin. */
  readonly key: (e: KeyboardEvent, at: () => Element | null) => boolean;
  readonly clear: () => void;
}

const ways: Readonly<Record<string, 'left' | 'right' | 'up' | 'down'>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

export function useWordPick(transcripts: readonly Transcript[]): WordPick {
  const [picked, setPicked] = useState<Picked>();
  const words = useMemo(() => new Map(transcripts.map((t) => [t.id, wordsOf(t.cues)])), [transcripts]);

  const take = useCallback(
    (transcript: Transcript | undefined, pick: Pick | undefined): boolean => {
      const all = transcript && words.get(transcript.id);
      const chosen = transcript && all && pick && chosenOf(transcript.cues, all, pick);
      if (!transcript || !pick || !chosen) return false;
      setPicked({ ...chosen, transcript, pick });
      return true;
    },
    [words],
  );
  const between = useCallback(
    (from: Spot | undefined, to: Spot | undefined): boolean => {
      if (!from || !to || from.transcript !== to.transcript) return false;
      const back = to.cue < from.cue || (to.cue === from.cue && to.at < from.at);
      const [a, b] = back ? [to, from] : [from, to];
      const pick = pickBetween(words.get(from.transcript) ?? [], a, b);
      const turned = pick && back ? { anchor: pick.focus, focus: pick.anchor } : pick;
      return take(
        transcripts.find((t) => t.id === from.transcript),
        turned,
      );
    },
    [words, transcripts, take],
  );

  useEffect(() => {
    const changed = (): void => {
      const s = getSelection();
      // A field that takes the focus empties the selection too; only a touch of other words, or Escape, lets go of what is chosen.
      if (!s || s.isCollapsed || s.rangeCount === 0) {
        if (spotOf(s?.anchorNode ?? null, 0)) setPicked(undefined);
        return;
      }
      const from = spotOf(s.anchorNode, s.anchorOffset);
      const to = spotOf(s.focusNode, s.focusOffset);
      between(from, to);
    };
    document.addEventListener('selectionchange', changed);
    return () => document.removeEventListener('selectionchange', changed);
  }, [between]);

  const clear = useCallback(() => {
    getSelection()?.removeAllRanges();
    setPicked(undefined);
  }, []);
  const show = (transcript: Transcript, pick: Pick): boolean => {
    select(transcript.id, words.get(transcript.id) ?? [], pick);
    return take(transcript, pick);
  };
  const begin = (at: Element | null): boolean => {
    const line = at?.closest('[data-cue-text]') ?? at?.querySelector('[data-cue-text]');
    if (!at || !line) return false;
    const range = document.createRange();
    range.selectNodeContents(at.closest('[data-cue-text]') ? at : line);
    const from = spotOf(range.startContainer, range.startOffset);
    const to = spotOf(range.endContainer, range.endOffset);
    const transcript = transcripts.find((t) => t.id === from?.transcript);
    const pick = from && to && pickBetween(words.get(from.transcript) ?? [], from, to);
    return transcript && pick ? show(transcript, pick) : false;
  };
  const key = (e: KeyboardEvent, at: () => Element | null): boolean => {
    if (picked && e.key === 'Escape') {
      clear();
      return true;
    }
    const way = ways[e.key];
    if (!way) return false;
    if (!picked) return e.shiftKey && begin(at());
    const all = words.get(picked.transcript.id) ?? [];
    return show(picked.transcript, movePick(all, picked.pick, way, e.shiftKey));
  };
  return { picked, begin, key, clear };
}
