// Why: talk of other coaches, people, money, weather and what would be must give no fact, and its neighbours must lose none.
import { describe, expect, test } from 'vitest';
import { readTranscript } from '../transcript/read-transcript.ts';
import { hear } from './hear.ts';

const said = (text: string) =>
  hear(
    readTranscript('t.vtt', `WEBVTT\n\n00:00:01.000 --> 00:00:20.000\n${text}\n`).cues,
  ).observations.filter((o) => o.sense !== 'claim');

describe('no fact of this coach', () => {
  test.each([
    'That tan one we had in June, the furnace was rusted out and the roof leaked.',
    'My brother-in-law left his outside and the ceiling got soaked.',
    'The one next door to us has three slides and a cracked windshield.',
    'Fella brought one in Tuesday with the frame cracked.',
    'Any trailer over ten years old, the roof leaks.',
    'An absorption refrigerator wants to be level.',
    'A new windshield will cost you eighteen hundred dollars.',
    'If this was August the refrigerator would be at fifty degrees.',
    'Does the roof leak? I have to climb up first.',
  ])('%s', (text) => {
    expect(said(text).map((o) => `${o.part} ${o.aspect} ${o.sense}`)).toEqual([]);
  });
});

describe('facts that only look like talk of something else', () => {
  test.each([
    ['A fella in town rebuilt it. The furnace is rusted.', 'furnace_run'],
    ['Behind the next door the water pump is leaking.', 'water_pump'],
    ['You can see the windshield is cracked.', 'windshield'],
    ["The generator wouldn't start.", 'generator'],
    ['The last one had three slides, but this one has four slides.', 'slide'],
  ])('%s', (text, part) => {
    expect(said(text).some((o) => o.part === part)).toBe(true);
  });
  test('an answer gives what was asked its polarity', () => {
    expect(said('Does the water pump leak? No.').find((o) => o.part === 'water_pump')).toMatchObject({
      sense: 'absent',
      polarity: 'good',
    });
    expect(said('Is the water pump leaking? Yes.').find((o) => o.part === 'water_pump')).toMatchObject({
      sense: 'defect',
    });
  });
});

describe('guesses and hearsay', () => {
  const hedgedOf = (text: string, part: string) => {
    const found = said(text).find((o) => o.part === part);
    return found && [found.hedged, found.saidBy];
  };
  test.each([
    ['Fresh tank is forty gallons or so.', 'fresh_tank', [true, undefined]],
    ['Fresh tank is better than forty gallons.', 'fresh_tank', [true, undefined]],
    ['The widow says the water pump leaks.', 'water_pump', [true, 'somebody']],
    ['The sticker says the fresh tank is forty gallons.', 'fresh_tank', [false, undefined]],
    ['There is some kind of leak at the water pump.', 'water_pump', [false, undefined]],
  ] as const)('%s', (text, part, expected) => {
    expect(hedgedOf(text, part)).toEqual(expected);
  });
});
