// Why: a player shows the stations of the walk as chapters and jumps to the second where something was found (WebVTT, W3C).
import type { Chapter, Packet } from '../../published/document.ts';
import { withoutControls } from './escape-html.ts';

/** Seconds -> "00:12:21.200". */
export function vttTime(seconds: number): string {
  const ms = Math.max(0, Math.round(seconds * 1000));
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${two(Math.floor(ms / 3_600_000))}:${two(Math.floor(ms / 60_000) % 60)}:${two(Math.floor(ms / 1000) % 60)}.${String(ms % 1000).padStart(3, '0')}`;
}

/** A chapter's title is cue text: one line, no markup, no arrow. */
const cueText = (text: string): string =>
  withoutControls(text)
    .replace(/\s+/g, ' ')
    .trim()
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');

/** The recording with the most chapters; the first of them when several have as many. */
export function mainRecording(chapters: readonly Chapter[]): string | undefined {
  const counts = new Map<string, number>();
  for (const c of chapters) counts.set(c.media, (counts.get(c.media) ?? 0) + 1);
  return [...counts].reduce<readonly [string, number] | undefined>(
    (best, one) => (best === undefined || one[1] > best[1] ? one : best),
    undefined,
  )?.[0];
}

/** Chapters of one recording as WebVTT; without one, of that with the most chapters. An empty walk gives a file with a heading only. */
export function chaptersVtt({ chapters }: Pick<Packet, 'chapters'>, media = mainRecording(chapters)): string {
  const cues = chapters
    .filter((c) => c.media === media && c.end > c.start)
    .map((c, i) => `${i + 1}\n${vttTime(c.start)} --> ${vttTime(c.end)}\n${cueText(c.title)}\n`);
  return ['WEBVTT\n', ...cues].join('\n');
}
