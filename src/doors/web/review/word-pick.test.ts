// Why: an observation made of chosen words carries exactly those words and the seconds they were said in.
import { describe, expect, test } from 'vitest';
import type { Cue } from '../../../said/entry.ts';
import { chosenOf, movePick, pickBetween, wordsOf } from './word-pick.ts';

const cues: readonly Cue[] = [
  { start: 0, end: 4, text: 'Left rear inner, oof,' },
  { start: 4, end: 8, text: 'eleven thirteen. No cracks.' },
];
const words = wordsOf(cues);
const said = (pick: Parameters<typeof chosenOf>[2] | undefined) => pick && chosenOf(cues, words, pick)?.words;

describe('chosen words', () => {
  test('are whole words, over the end of a line too', () => {
    const pick = pickBetween(words, { cue: 0, at: 12 }, { cue: 1, at: 3 });
    expect(said(pick)).toBe('inner, oof, eleven');
    expect(chosenOf(cues, words, pick!)).toMatchObject({ start: 1.905, end: 4.889 });
  });
  test('between two words are none', () => {
    expect(pickBetween(words, { cue: 0, at: 4 }, { cue: 0, at: 5 })).toBeUndefined();
  });
  test('move word by word, with Shift take more and give back, and stop at the ends', () => {
    const one = { anchor: 2, focus: 2 };
    expect(said(movePick(words, one, 'right', false))).toBe('oof,');
    const more = movePick(words, movePick(words, one, 'right', true), 'right', true);
    expect(said(more)).toBe('inner, oof, eleven');
    expect(said(movePick(words, more, 'left', true))).toBe('inner, oof,');
    expect(said(movePick(words, one, 'left', true))).toBe('rear inner,');
    expect(movePick(words, { anchor: 0, focus: 0 }, 'left', false)).toEqual({ anchor: 0, focus: 0 });
    expect(movePick(words, { anchor: 7, focus: 7 }, 'right', true)).toEqual({ anchor: 7, focus: 7 });
  });
  test('move to the word below at about the same place', () => {
    expect(said(movePick(words, { anchor: 1, focus: 1 }, 'down', false))).toBe('thirteen.');
    expect(said(movePick(words, { anchor: 5, focus: 5 }, 'up', false))).toBe('rear');
  });
});
