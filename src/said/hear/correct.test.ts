// Why: what a speaker takes back must not stand, and what replaces it must be of the same thing, however it is worded.
import { describe, expect, test } from 'vitest';
import { readTranscript } from '../transcript/read-transcript.ts';
import { hear } from './hear.ts';

const said = (text: string) =>
  hear(readTranscript('t.vtt', `WEBVTT\n\n00:00:01.000 --> 00:00:20.000\n${text}\n`).cues).observations;
const standing = (text: string, part: string) =>
  said(text)
    .filter((o) => o.part === part && !o.retracted)
    .map((o) =>
      o.value.is === 'quantity' ? o.value.value : o.value.is === 'count' ? o.value.count : 'other',
    );

describe('a number taken back', () => {
  test.each([
    ['The generator hours are two hundred and six. Look again, two hundred and sixty.', 260],
    ['Generator hours, four ten, no, I had my thumb over it, four seventeen.', 417],
    ['Generator hours four ten scratch that four seventeen.', 417],
    ['Generator hours, four ten. Nope. Four seventeen.', 417],
    ['Generator hours, four ten, I lied, four seventeen.', 417],
    ['Generator hours, four ten, hang on, let me get my light on it, four seventeen.', 417],
  ])('%s', (text, hours) => {
    expect(standing(text, 'generator')).toEqual([hours]);
  });
  test('keeps its part and unit where the second is bare', () => {
    const [right] = said('Fresh tank is forty gallons, no, my mistake, fifty.').filter((o) => !o.retracted);
    expect(right).toMatchObject({
      part: 'fresh_tank',
      value: { is: 'quantity', value: 50, unit: '[gal_us]' },
    });
    expect(right?.corrects).toHaveLength(1);
  });
});

describe('no correction', () => {
  test('an idiom that only looks like one', () => {
    expect(
      said('The fresh tank is forty gallons and with my bad knee the gray is fifty gallons.').some(
        (o) => o.retracted,
      ),
    ).toBe(false);
  });
  test('different things in a row', () => {
    expect(
      said('Fresh tank is forty gallons, no leaks. Gray tank is fifty gallons.').some((o) => o.retracted),
    ).toBe(false);
  });
  test('an answer', () => {
    expect(
      said('Generator has four hundred hours. Any leaks? No. Black tank is forty gallons.').some(
        (o) => o.retracted,
      ),
    ).toBe(false);
  });
});
