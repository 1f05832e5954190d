// Why: what is said in the order of another language must arrive in the order of English, and native talk must stay as it is.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';
import { hearJson } from './hear-json.ts';
import { plainOrder } from './plain-order.ts';
import { wordsOf } from './word.ts';

const plain = (text: string): string =>
  plainOrder(wordsOf([{ start: 0, end: 5, text }]).words)
    .map((w) => w.norm)
    .join(' ');

describe('words in the order of English', () => {
  test.each([
    ['the lamp of the brake', 'the brake lamp'],
    ['the seat of the driver is dirty', 'the driver seat is dirty'],
    ['the step electric works', 'the electric step works'],
    ['the lock closes not', "the lock doesn't close"],
    ['oven no works', "oven doesn't work"],
    ['twelve comma four', 'twelve point four'],
    ['eighty three comma five one two', 'eighty three five one two'],
    ['of dents I found nothing', 'dents i found none'],
    ['extinguisher there is not', 'extinguisher there is none'],
    ['it has not a spare wheel', 'it has no spare wheel'],
    ['the pump keeps the pressure', 'the pump holds pressure'],
    ['the hatch it is dry', 'the hatch it is dry'],
    ['the toilet it does not flush', 'the toilet does not flush'],
    ['it is dry of dents i see nothing', 'it is dry dents i see none'],
    ['the pump he is loud', 'the pump is loud'],
    ['the panel is splitted', 'the panel is split'],
    ['two from six lamps burn', 'two of six lamps burn'],
    ['the toilet, it is fine', 'the toilet it is fine'],
    ['the tub, how you say, the shower', 'the tub the shower'],
  ])('%s', (said, meant) => {
    expect(plain(said)).toBe(meant);
  });

  test.each([
    'there is no play in the wheel',
    'it will not turn on',
    'a set of tires on the back',
    'two inches of the seam has let go',
    'the plug outside by the door is fine',
    'I have not had it on yet',
  ])('left alone: %s', (said) => {
    expect(plain(said)).toBe(said.toLowerCase());
  });

  test('every word keeps a written word, in order', () => {
    const all = plainOrder(
      wordsOf([{ start: 0, end: 9, text: 'The light of the brake burns not, of rust I see nothing.' }]).words,
    );
    all.forEach((w, i) => {
      expect(w.written).toBeGreaterThanOrEqual(all[i - 1]?.written ?? 0);
    });
  });
});

describe('what is said of one more part by a word', () => {
  const heard = (text: string): string[] =>
    hearJson(hear([{ start: 0, end: 9, text }]))
      .filter((r) => r.kind === 'operates' || r.kind === 'defect')
      .map((r) => `${r.part} ${r.kind}`);
  test.each([
    ['The water pump runs, the macerator too.', ['water_pump operates', 'macerator operates']],
    ['The radio works, the horn no.', ['radio_nav operates', 'horn defect']],
    ['The generator runs. Radio I like.', ['generator operates']],
  ])('%s', (said, rows) => {
    expect(heard(said)).toEqual(rows);
  });
});
