// Why: what was not looked at, guessed, asked for, is there or is not: the families of ways to say it, in sentences of our own.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

const heard = (text: string): string[] =>
  hear([{ start: 0, end: 12, text }]).observations.map((o) => `${o.part} ${o.aspect} ${o.sense}`);

describe('what is not known', () => {
  test.each([
    ['Oven I left alone.', 'oven'],
    ['Generator, never ran it.', 'generator'],
    ['The furnace I ran out of daylight on.', 'furnace_run'],
    ['Water heater, did not get to it.', 'water_heater_out'],
    ['The awning, nobody has had it out.', 'patio_awning'],
    ['I have not been up on the roof.', 'roof_membrane'],
    ['I forgot to try the cruise control.', 'cruise_control'],
    ['Toilet, your guess is as good as mine.', 'toilet'],
    ['The microwave was not tested.', 'microwave'],
    ["Dishwasher, couldn't tell you.", 'dishwasher'],
  ])('%s', (text, part) => {
    expect(heard(text).filter((o) => o.startsWith(`${part} `) && o.endsWith(' unknown'))).toHaveLength(1);
  });
  test.each([
    "I haven't seen a leak on the roof.",
    "Couldn't find a crack in the windshield.",
    "Can't complain about the furnace.",
    "It won't run your air conditioner.",
    'Before I forget, the keys.',
    'The furnace would not light.',
    "You won't find a better floor.",
  ])('not: %s', (text) => {
    expect(heard(text).filter((o) => o.endsWith(' unknown'))).toEqual([]);
  });
  test('a list before the comma is not known, each of it', () => {
    const all = heard("The cooktop, the oven, the furnace, I don't know on any of them.");
    expect(all.filter((o) => o.endsWith(' unknown')).map((o) => o.split(' ')[0])).toEqual(
      expect.arrayContaining(['oven', 'furnace_run']),
    );
  });
  test('the way of running that was not tried is named', () => {
    expect(heard("Refrigerator runs on electric. On gas I haven't tried it.")).toContain(
      'refrigerator mode_LP unknown',
    );
  });
});

describe('guesses at a cause', () => {
  test.each([
    ['The toilet leaks. Could be the seal.'],
    ['The toilet leaks. Worn seal, I guess.'],
    ['The toilet leaks. Worn seal, could be.'],
    ["The toilet leaks. That's the valve or the seal."],
    ['The toilet leaks. Probably the seal, might be the flange.'],
  ])('%s', (text) => {
    const all = heard(text);
    expect(all.filter((o) => o === 'toilet cause unknown')).toHaveLength(1);
    expect(all.filter((o) => o.endsWith(' defect'))).toHaveLength(1);
  });
  test('what could be better is no cause', () => {
    expect(heard('The toilet leaks. Could be worse.')).not.toContain('toilet cause unknown');
  });
});

describe('jobs spoken aloud', () => {
  test.each([
    "The toilet leaks. I'll have the shop reseal that.",
    "The toilet leaks, that's a seal kit.",
    'The toilet leaks and it needs to be replaced.',
    'The toilet leaks. We are going to swap it out.',
    "The toilet leaks. I'm replacing it before it goes.",
  ])('%s', (text) => {
    expect(heard(text).filter((o) => o === 'toilet advice condition')).toHaveLength(1);
  });
  test.each([
    "You don't need to replace the toilet.",
    "I'll show you the toilet.",
    'You need a key for the door.',
  ])('not: %s', (text) => {
    expect(heard(text).filter((o) => o.includes(' advice '))).toEqual([]);
  });
});

describe('there or not', () => {
  test.each([
    ['No generator on this one.', 'generator present absent'],
    ["Generator, there isn't one.", 'generator present absent'],
    ['Solar, nope.', 'solar_array present absent'],
    ["There ain't no microwave.", 'microwave present absent'],
    ["The TV's gone.", 'tv_living present absent'],
    ["You've got a dishwasher.", 'dishwasher present condition'],
    ["The spare's under the bed.", 'spare_tire present condition'],
  ])('%s', (text, row) => {
    expect(heard(text)).toContain(row);
  });
});

describe('praise', () => {
  test.each([
    "You won't find a nicer coach than this.",
    'Finest kitchen in the county.',
    'It rides like a dream.',
    'There is more storage in here than my house.',
  ])('%s', (text) => {
    expect(heard(text).some((o) => o.endsWith(' claim'))).toBe(true);
  });
});
