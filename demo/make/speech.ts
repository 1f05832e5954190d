// Why: makes a recording's transcript (WebVTT) of a written walk, timed as a person talks and cut as a recogniser cuts: anywhere.

export interface SpokenCue {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const wordsPerSecond = 2.38;
const wordsPerCue = [9, 12, 14, 10, 13, 11, 8, 15] as const;

/** Cues of a walk's text. Deterministic: the pace is fixed, longer words take longer, [n] is a pause of n seconds. */
export function speak(text: string): readonly SpokenCue[] {
  const cues: SpokenCue[] = [];
  let at = 0.4;
  let held: string[] = [];
  let began = at;
  const close = (): void => {
    if (held.length) cues.push({ start: began, end: at, text: held.join(' ') });
    held = [];
    began = at;
  };
  for (const line of text.split('\n')) {
    if (line.startsWith('#') || line.startsWith('@') || !line.trim()) continue;
    const pause = /^\[([\d.]+)\]$/.exec(line.trim());
    if (pause) {
      close();
      at += Number(pause[1]);
      began = at;
      continue;
    }
    for (const word of line.trim().split(/\s+/)) {
      held.push(word);
      const length = 0.55 + Math.min(word.length, 11) * 0.09;
      at += length / wordsPerSecond + (/[.?!]$/.test(word) ? 0.24 : /,$/.test(word) ? 0.1 : 0);
      if (held.length >= wordsPerCue[cues.length % wordsPerCue.length]!) close();
    }
  }
  close();
  return cues;
}

const stamp = (seconds: number): string => {
  const ms = Math.round(seconds * 1000);
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${two(Math.floor(ms / 3_600_000))}:${two(Math.floor(ms / 60_000) % 60)}:${two(Math.floor(ms / 1000) % 60)}.${String(ms % 1000).padStart(3, '0')}`;
};

/** The cues as WebVTT. */
export const toWebVtt = (cues: readonly SpokenCue[]): string =>
  `WEBVTT\n\nNOTE An invented walk of an invented unit.\n\n${cues.map((c) => `${stamp(c.start)} --> ${stamp(c.end)}\n${c.text}\n`).join('\n')}`;
