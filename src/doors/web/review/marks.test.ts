// Why: a mark in the wrong place makes the reviewer accept what was not said.
import { describe, expect, test } from 'vitest';
import type { Cue, Observation } from '../../../said/entry.ts';
import { markCues } from './marks.ts';

const heard = (id: string, start: number, end: number, words: string): Observation =>
  ({ id, source: { from: 'speech', media: 'm', start, end, words } }) as Observation;

const cues: readonly Cue[] = [
  { start: 0, end: 4, text: 'Left rear inner, oof,' },
  { start: 4, end: 8, text: 'eleven thirteen. No cracks. No cracks at all.' },
];
const textOf = (
  stretches: readonly (readonly { text: string; heard: readonly string[] }[])[],
  id: string,
): string[] =>
  stretches.map((s) =>
    s
      .filter((x) => x.heard.includes(id))
      .map((x) => x.text)
      .join(''),
  );

describe('markCues', () => {
  test('gives every word back once, marked or not', () => {
    const marked = markCues(cues, [
      heard('a', 0, 8, 'rear inner oof eleven'),
      heard('b', 4, 8, 'eleven thirteen'),
    ]);
    expect(marked.map((s) => s.map((x) => x.text).join(''))).toEqual(cues.map((c) => c.text));
  });
  test('marks words over the end of a cue in both, whatever the stops', () => {
    expect(textOf(markCues(cues, [heard('a', 0, 8, 'Rear inner oof eleven')]), 'a')).toEqual([
      'rear inner, oof,',
      'eleven',
    ]);
  });
  test('finds words that begin before the cue they are timed to', () => {
    expect(textOf(markCues(cues, [heard('a', 4.2, 5, 'inner oof eleven thirteen')]), 'a')).toEqual([
      'inner, oof,',
      'eleven thirteen',
    ]);
  });
  test('takes the second of two where the second is meant', () => {
    const twice = [...cues, { start: 8, end: 12, text: 'No cracks here.' }];
    expect(textOf(markCues(twice, [heard('a', 8, 12, 'no cracks')]), 'a')).toEqual(['', '', 'No cracks']);
  });
  test('lets marks overlap', () => {
    const [, second] = markCues(cues, [
      heard('a', 4, 8, 'eleven thirteen'),
      heard('b', 4, 8, 'thirteen no cracks'),
    ]);
    expect(second?.find((s) => s.text === 'thirteen')?.heard).toEqual(['a', 'b']);
  });
  test('marks the whole time where the words cannot be found', () => {
    expect(textOf(markCues(cues, [heard('a', 5, 6, 'something never said')]), 'a')).toEqual([
      '',
      cues[1]!.text,
    ]);
  });
  test('does not take the same words of a later time for these', () => {
    expect(
      textOf(
        markCues(
          [...cues, { start: 60, end: 64, text: 'something never said' }],
          [heard('a', 1, 2, 'something never said')],
        ),
        'a',
      ),
    ).toEqual(['Left rear inner, oof,', '', '']);
  });
});
