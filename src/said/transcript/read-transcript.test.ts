import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readRecognizerJson } from './read-recognizer-json.ts';
import { readSubRip } from './read-subrip.ts';
import { readTranscript } from './read-transcript.ts';
import { readWebVtt } from './read-webvtt.ts';

const vtt =
  '\uFEFFWEBVTT - a title\r\n\r\nNOTE not spoken\r\n\r\nSTYLE\r\n::cue { color: red }\r\n\r\none\r\n00:01.000 --> 00:03.500 align:start position:10%\r\n<v Ann>Left &amp; <i>right</i>\r\nfront\r\n\r\n60:00.000 --> 61:00.000\r\nlost\r\n\r\n00:04.000 --> 00:05.000\r\ngood &#39;un\r\n';

describe('WebVTT', () => {
  test('keeps what parses, hands back what does not with its line', () => {
    const { cues, puzzles } = readWebVtt(vtt);
    expect(cues).toEqual([
      { start: 1, end: 3.5, text: 'Left & right front' },
      { start: 4, end: 5, text: "good 'un" },
    ]);
    expect(puzzles).toEqual([{ line: 13, code: 'bad-timestamp', raw: '60:00.000 --> 61:00.000\nlost' }]);
  });
  test('a lost empty line between two cues costs neither of them', () => {
    const { cues } = readWebVtt('WEBVTT\n\n00:01.000 --> 00:02.000\nfirst\n00:02.000 --> 00:03.000\nsecond');
    expect(cues.map((c) => c.text)).toEqual(['first', 'second']);
  });
  test('a file without its header is read and says so', () => {
    const { cues, puzzles } = readWebVtt('00:01.000 --> 00:02.000\nhello');
    expect(cues).toHaveLength(1);
    expect(puzzles[0]?.code).toBe('no-webvtt-header');
  });
  test('an end before its start is a puzzle, with the words kept in it', () => {
    const { cues, puzzles } = readWebVtt('WEBVTT\n\n00:05.000 --> 00:02.000\nbackwards');
    expect(cues).toEqual([]);
    expect(puzzles[0]).toMatchObject({ code: 'ends-before-it-starts', line: 3 });
    expect(puzzles[0]?.raw).toContain('backwards');
  });
});

describe('SubRip', () => {
  test('reads commas, with and without numbers', () => {
    const { cues, puzzles } = readSubRip(
      '1\n00:00:01,500 --> 00:00:02,000\nhello\n\n00:01:00,0 --> 00:01:01,250\nworld\n',
    );
    expect(puzzles).toEqual([]);
    expect(cues).toEqual([
      { start: 1.5, end: 2, text: 'hello' },
      { start: 60, end: 61.25, text: 'world' },
    ]);
  });
});

describe('recogniser JSON', () => {
  test('segments without words', () => {
    const { cues } = readRecognizerJson('{"segments":[{"start":0.5,"end":2,"text":" Left front "}]}');
    expect(cues).toEqual([{ start: 0.5, end: 2, text: 'Left front' }]);
  });
  test('words with times become short cues at their own seconds', () => {
    const words = Array.from({ length: 14 }, (_, i) => ({ word: `w${i}`, start: i, end: i + 0.5 }));
    const { cues } = readRecognizerJson(
      JSON.stringify({ segments: [{ start: 0, end: 14, text: words.map((w) => w.word).join(' '), words }] }),
    );
    expect(cues.map((c) => c.start)).toEqual([0, 12]);
    expect(cues[1]?.text).toBe('w12 w13');
  });
  test('chunks with pairs, transcription with milliseconds, results with alternatives', () => {
    expect(readRecognizerJson('{"chunks":[{"timestamp":[1,2],"text":"a"}]}').cues[0]).toEqual({
      start: 1,
      end: 2,
      text: 'a',
    });
    expect(
      readRecognizerJson('{"transcription":[{"offsets":{"from":1500,"to":2500},"text":"b"}]}').cues[0],
    ).toEqual({ start: 1.5, end: 2.5, text: 'b' });
    expect(
      readRecognizerJson(
        '{"results":[{"alternatives":[{"transcript":"c d","words":[{"word":"c","startTime":"1.5s","endTime":"2s"},{"word":"d","startTime":"2s","endTime":"2.5s"}]}]}]}',
      ).cues[0],
    ).toEqual({ start: 1.5, end: 2.5, text: 'c d' });
  });
  test('no times: said in order at the pace of speech, and reported', () => {
    const { cues, puzzles } = readRecognizerJson('[{"text":"one two"},{"text":"three"}]');
    expect(cues[1]?.start).toBeCloseTo(0.8);
    expect(puzzles.map((p) => p.code)).toEqual(['no-times', 'no-times']);
  });
  test('what is no JSON is one puzzle', () => {
    expect(readRecognizerJson('{').puzzles[0]?.code).toBe('not-json');
  });
});

describe('any transcript', () => {
  test('plain text with marks', () => {
    const { cues } = readTranscript('notes.txt', '[0:05] Left front\n[1:02:03] roof');
    expect(cues.map((c) => [c.start, c.text])).toEqual([
      [5, 'Left front'],
      [3723, 'roof'],
    ]);
  });
  test('is told by what it looks like where the name says otherwise', () => {
    expect(readTranscript('walk.txt', vtt).cues).toHaveLength(2);
    expect(readTranscript('walk.vtt', '1\n00:00:01,000 --> 00:00:02,000\nhi').cues).toHaveLength(1);
  });
  test('never throws, and cues are in order and end after they start', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('a.vtt', 'a.srt', 'a.json', 'a.txt'),
        fc.array(
          fc.constantFrom(
            'WEBVTT',
            '\n',
            '\n\n',
            '00:01.000 --> 00:02.000',
            '00:00:01,000 --> 00:00:00,000',
            'word',
            '[1:00]',
            '{"text":',
            '"a"}',
            '-->',
            '<b>',
            '&#xZZ;',
            '\r',
            '7',
          ),
        ),
        (name, bits) => {
          const { cues } = readTranscript(name, bits.join(' '));
          cues.forEach((c, i) => {
            expect(c.end).toBeGreaterThanOrEqual(c.start);
            expect(c.start).toBeGreaterThanOrEqual(cues[i - 1]?.start ?? 0);
          });
        },
      ),
      { seed: 7, numRuns: 400 },
    );
  });
});
