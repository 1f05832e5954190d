// Why: a time written as text becomes seconds by one rule for each notation, or is refused.

const vtt = /^(?:(\d+):)?(\d\d):(\d\d)\.(\d\d\d)$/;
const srt = /^(\d+):(\d\d):(\d\d)[,.](\d{1,3})$/;
const mark = /^(?:(\d+):)?(\d{1,3}):(\d\d)(?:[.,](\d{1,3}))?$/;

const seconds = (
  h: string | undefined,
  m: string,
  s: string,
  fraction: string | undefined,
): number | undefined => {
  if (Number(s) > 59 || (h !== undefined && Number(m) > 59)) return undefined;
  const thousandths = fraction ? Number(fraction.padEnd(3, '0')) : 0;
  return (Number(h ?? 0) * 3_600_000 + Number(m) * 60_000 + Number(s) * 1000 + thousandths) / 1000;
};

/**
 * A WebVTT timestamp in seconds: two-digit minutes and seconds under 60, a full stop and three digits (W3C WebVTT 1,
 * section 4.3). Hours of one digit are accepted, as the standard's own parser does.
 */
export function readVttTimestamp(text: string): number | undefined {
  const m = vtt.exec(text);
  if (!m || Number(m[2]) > 59) return undefined;
  return seconds(m[1], m[2] ?? '', m[3] ?? '', m[4]);
}

/** A SubRip timestamp in seconds: hours, minutes, seconds, a comma (a full stop is let pass) and thousandths. */
export function readSrtTimestamp(text: string): number | undefined {
  const m = srt.exec(text);
  return m ? seconds(m[1], m[2] ?? '', m[3] ?? '', m[4]) : undefined;
}

/** A hand-written mark in seconds: "3:07", "75:10", "1:02:03.5". */
export function readMark(text: string): number | undefined {
  const m = mark.exec(text);
  return m ? seconds(m[1], m[2] ?? '', m[3] ?? '', m[4]) : undefined;
}
