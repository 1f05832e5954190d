// Why: of two voices only what one of them read counts: no rules, orders, other coaches, nor what was denied or turned round.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';
import { hearJson } from './hear-json.ts';

const rows = (text: string) =>
  hearJson(hear([{ start: 0, end: 30, text }])).filter((r) => r.kind !== 'claim' && !r.retracted);
const numbers = (text: string) =>
  rows(text)
    .map((r) => r.value)
    .filter((v) => typeof v === 'number');

describe('rules, orders, hours', () => {
  test.each([
    ['Anything below three I send back.'],
    ['A healthy battery reads twelve seven.'],
    ['I like to see ten on a steer tire.'],
    ['Call me ninety.'],
    ['Last gasser through here had two.'],
    ['They last seven years, usually.'],
    ['Hold it at fifteen hundred.'],
    ['The buyer comes at three.'],
    ['Any tear that is over four gets a patch.'],
    ['Is that a three or an eight?'],
  ])('%s is no reading', (said) =>
    expect(numbers(`Left front tire, nine thirty-seconds. ${said}`)).toEqual([9]),
  );

  test('a needle watched is no reading, what it comes to is', () =>
    expect(
      numbers('Air pressure is building. Forty, seventy, ninety. Governor cut out at one eighteen.'),
    ).toEqual([118]));
});

describe('other coaches', () => {
  test('what stands across the row, and then this one', () => {
    const said = rows('The coach across the row has a torn awning. This one works.');
    expect(said.some((r) => r.kind === 'defect')).toBe(false);
    expect(said.some((r) => r.part === 'patio_awning' && r.kind === 'operates')).toBe(true);
  });
});

describe('taken back', () => {
  test('two readings change places, said anew or not', () => {
    for (const again of ['Other way round.', 'Other way round: left is nine, right is seven.']) {
      const said = rows(`Front pads, left seven millimeters, right nine. ${again}`);
      expect(said.find((r) => r.place?.startsWith('left'))?.value).toBe(9);
      expect(said.find((r) => r.place?.startsWith('right'))?.value).toBe(7);
    }
  });
  test('denied to its face', () =>
    expect(rows('The toilet leaks. No it does not.').some((r) => r.kind === 'defect')).toBe(false));
  test('a choice of two numbers', () =>
    expect(numbers('Propane at seventy percent. Seventy or sixty? Sixty.')).toEqual([60]));
});

describe('answers', () => {
  test.each([
    ['Does the fan run? It does.', 'operates'],
    ['Does the fan run? No, it is seized.', 'defect'],
    ['Ladder tight? Tight.', 'condition'],
  ])('%s', (said, kind) => expect(rows(said).some((r) => r.kind === kind)).toBe(true));
});

test('a corner by itself reads its tire', () =>
  expect(
    rows('Left front, one oh five. Right front one oh eight.').map((r) => [r.part, r.place, r.value]),
  ).toEqual([
    ['tire', 'left front', 105],
    ['tire', 'right front', 108],
  ]));
