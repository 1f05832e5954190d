// Why: proposed observations are shown as marks on the very words they were heard in.
import type { Cue, Observation } from '../../../said/entry.ts';

/** A stretch of a cue's text, with the observations heard in it. */
export interface Stretch {
  readonly text: string;
  readonly heard: readonly string[];
}

interface Span {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

const plain = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9]/g, ' ');

/** Where words stand in a text, whatever the case and the stops between them; undefined when they do not. */
function findWords(text: string, words: string, after: number): readonly [number, number] | undefined {
  const wanted = plain(words).trim().split(/ +/).filter(Boolean);
  if (wanted.length === 0) return undefined;
  const pattern = new RegExp(`\\b${wanted.join('[^a-z0-9]+')}\\b`, 'g');
  // The words may begin before the cue they are timed to; what ends before it is an earlier time they were said.
  pattern.lastIndex = Math.max(0, after - words.length - 20);
  const where = plain(text);
  for (let found = pattern.exec(where); found; found = pattern.exec(where)) {
    if (found.index + found[0].length > after) return [found.index, found.index + found[0].length];
  }
  return undefined;
}

/**
 * The cues of a transcript, each cut into stretches. Words that run over the end of a cue are marked in both; where the words cannot be found
 * again the whole cues of that time are marked, so that no observation is without its place.
 */
export function markCues(
  cues: readonly Cue[],
  heard: readonly Observation[],
): readonly (readonly Stretch[])[] {
  const starts: number[] = [];
  let whole = '';
  for (const c of cues) {
    starts.push(whole.length);
    whole += `${c.text} `;
  }
  const spans: Span[] = [];
  for (const o of heard) {
    if (o.source.from !== 'speech') continue;
    const { start, end, words } = o.source;
    const first = cues.findIndex((c) => c.end > start);
    if (first < 0) continue;
    const last = Math.max(
      first,
      cues.findLastIndex((c) => c.start < Math.max(end, start + 0.01)),
    );
    const at = findWords(whole, words, starts[first] ?? 0);
    const limit = (starts[last] ?? 0) + (cues[last]?.text.length ?? 0);
    if (at && at[0] < limit + 1) spans.push({ id: o.id, from: at[0], to: at[1] });
    else spans.push({ id: o.id, from: starts[first] ?? 0, to: limit });
  }
  return cues.map((c, i) => cut(c.text, starts[i] ?? 0, spans));
}

function cut(text: string, offset: number, spans: readonly Span[]): readonly Stretch[] {
  const end = offset + text.length;
  const here = spans.filter((s) => s.from < end && s.to > offset);
  const edges = new Set([offset, end, ...here.flatMap((s) => [s.from, s.to])]);
  const inside = [...edges].filter((e) => e >= offset && e <= end).sort((a, b) => a - b);
  return inside.slice(0, -1).map((from, i) => {
    const to = inside[i + 1] ?? end;
    return {
      text: text.slice(from - offset, to - offset),
      heard: here.filter((s) => s.from <= from && s.to >= to).map((s) => s.id),
    };
  });
}
