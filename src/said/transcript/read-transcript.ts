// Why: a file of timed words is read by what it is called, and where that says nothing by what it looks like.
import { readMarkedText } from './read-marked-text.ts';
import { readRecognizerJson } from './read-recognizer-json.ts';
import { readSubRip } from './read-subrip.ts';
import { readWebVtt } from './read-webvtt.ts';
import type { Transcript } from './transcript.ts';

const looksLike = (text: string): ((text: string) => Transcript) => {
  const head = text
    .replace(/^\uFEFF/, '')
    .trimStart()
    .slice(0, 4000);
  if (head.startsWith('WEBVTT')) return readWebVtt;
  if (head.startsWith('{') || head.startsWith('[{') || /^\[\s*\{/.test(head)) return readRecognizerJson;
  if (/^\d+:\d\d:\d\d,\d{1,3}\s*-->/m.test(head)) return readSubRip;
  return head.includes('-->') ? readWebVtt : readMarkedText;
};

/**
 * Reads a transcript: WebVTT, SubRip, recogniser JSON or plain text with [m:ss] marks. What the file looks like decides
 * where it plainly is something else than its name says.
 */
export function readTranscript(name: string, text: string): Transcript {
  const ending = /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase();
  const seen = looksLike(text);
  if (seen !== readMarkedText) return seen(text);
  if (ending === 'vtt') return readWebVtt(text);
  if (ending === 'srt') return readSubRip(text);
  if (ending === 'json') return readRecognizerJson(text);
  return readMarkedText(text);
}
