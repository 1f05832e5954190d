// Why: left and right swapped, or a place carried over from another thing, makes a finding about the wrong tire.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';
import { type HearRow, hearJson } from './hear-json.ts';
import { placeAt } from './place-at.ts';
import { placeIdOf } from './place-words.ts';
import { wordsOf } from './word.ts';

const rowsOf = (text: string): HearRow[] => hearJson(hear([{ start: 0, end: text.length / 15, text }]));
const streamOf = (text: string) => wordsOf([{ start: 0, end: 10, text }]).words;
/** The first place in the words, as it would be of a tire. */
const tirePlace = (text: string): string | undefined => {
  const words = streamOf(text);
  for (let i = 0; i < words.length; i++) {
    const hit = placeAt(words, i);
    if (hit) return placeIdOf('tire', hit);
  }
  return undefined;
};

describe('a corner, in any order of its words', () => {
  test.each([
    ['left rear outer', 'left-rear-outer'],
    ['the outside one on the passenger side in back', 'right-rear-outer'],
    ['front driver tire', 'left-front'],
    ['curb side rear', 'right-rear'],
    ['rear inner on the right', 'right-rear-inner'],
    ['street side front', 'left-front'],
    ['off door side rear', 'left-rear'],
    ['offdoor side rear', 'left-rear'],
    ['door side rear outer', 'right-rear-outer'],
    ['LF', 'left-front'],
    ['R R O', 'right-rear-outer'],
    ['the inner dual on the driver side', 'left-rear-inner'],
    ['port side rear', 'left-rear'],
    ["passenger's side front", 'right-front'],
    ['on the right, front', 'right'],
  ])('%s', (said, place) => {
    expect(tirePlace(said)).toBe(place);
  });
});

describe('words that look like places and are none', () => {
  test.each([
    'I am right now at the gate',
    'he left it alone',
    'I left the hose there',
    'back up a little',
    'we came back in',
    'there is half left',
    'it went right back',
    'it closes right',
    'the sign is right there',
    'in front of the shop',
    'I drive it home',
    'it drives nice',
    'out on the road',
    'the driver told me so',
    'pulls to the left',
    'we took the back road',
    "that's all right",
    'nothing left over',
  ])('%s', (said) => {
    expect(tirePlace(said)).toBeUndefined();
  });
});

const tires = (text: string): (string | number | undefined)[][] =>
  rowsOf(text)
    .filter((r) => r.part === 'tire' && r.kind === 'quantity')
    .map((r) => [r.place, r.value]);

describe('a place holds until another is said', () => {
  test('inner stays on its side and its axle', () => {
    expect(
      tires(
        'Tires. Left rear outer, nine thirty-seconds. Inner, eight thirty-seconds. Right rear outer, seven thirty-seconds. Inner, six thirty-seconds.',
      ),
    ).toEqual([
      ['left rear outer', 9],
      ['left rear inner', 8],
      ['right rear outer', 7],
      ['right rear inner', 6],
    ]);
  });
  test('the pressure is that of the corner named before', () => {
    expect(tires('Tires. Right front, six thirty-seconds. Seventy pounds.')).toEqual([
      ['right front', 6],
      ['right front', 70],
    ]);
  });
  test('the other side is across', () => {
    expect(tires('Tires. Left front has five thirty-seconds. Other side, four thirty-seconds.')).toEqual([
      ['left front', 5],
      ['right front', 4],
    ]);
  });
  test('a list without stops, the place behind each number', () => {
    const plain =
      'down here are the tires and all of them have the same name on them and the pressures are fifty pounds left front fifty two pounds right front sixty pounds left rear';
    expect(tires(plain)).toEqual([
      ['left front', 50],
      ['right front', 52],
      ['left rear', 60],
    ]);
  });
});

const of = (part: RegExp, text: string): (string | undefined)[] =>
  rowsOf(text)
    .filter((r) => part.test(r.part))
    .map((r) => r.place);

describe('rooms, landmarks and conditions', () => {
  test('beside what it is', () => {
    expect(of(/sealant/, 'On the roof. The lap sealant is cracked around the ladder.')[0]).toContain(
      'ladder',
    );
    expect(of(/lights/, 'Inside. The ceiling light over the sink is dead.')[0]).toContain('over sink');
  });
  test('gas and electric of one heater are two facts', () => {
    expect(of(/water_heater/, 'Water heater lights on gas. Electric side is dead.')).toEqual([
      expect.stringContaining('on LP'),
      expect.stringContaining('on electric'),
    ]);
  });
  test('generator readings keep their load', () => {
    const text = 'Generator. No load, one twenty-five volts. With both airs running, one eighteen volts.';
    expect(of(/generator/, text)).toEqual([expect.stringContaining('no load'), 'loaded']);
  });
  test('what is in one room only says so, and that nobody said it', () => {
    const row = rowsOf('The toilet is leaking.').find((r) => r.part === 'toilet');
    expect(row).toMatchObject({ place: 'bathroom', placeAssumed: 'bathroom' });
  });
  test('what goes on record is only what was said', () => {
    const { observations } = hear([{ start: 0, end: 3, text: 'The toilet is leaking.' }]);
    expect(observations.map((o) => o.place)).toEqual(observations.map(() => undefined));
  });
  test('a new part does not take the place of the one before', () => {
    expect(
      of(/^horn$|skylight/, 'The left rear tail light is cracked. The skylight is cracked.'),
    ).not.toContain('left rear');
  });
});
