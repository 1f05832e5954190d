// Why: a guess that is wrong costs more keys than none; what chosen words plainly say is guessed as a person would write it.
import { describe, expect, test } from 'vitest';
import type { Observation } from '../../../said/entry.ts';
import { guessesOf } from './guess.ts';

const cues = [
  { start: 0, end: 5, text: 'Now the left front tire.' },
  { start: 5, end: 10, text: 'A hundred and five psi. It has a look about it.' },
];
describe('what chosen words may say', () => {
  test('is heard in the words alone', async () => {
    const chosen = { words: 'water pump works', start: 1, end: 2, lead: { start: 0, text: '' } };
    expect(await guessesOf(chosen, cues, undefined, 'class-a-diesel')).toMatchObject([
      { part: 'water_pump', aspect: 'operates' },
    ]);
  });
  test('takes the part from what was said before', async () => {
    const [guess] = await guessesOf(
      { words: 'A hundred and five psi.', start: 5, end: 7, lead: { start: 5, text: '' } },
      cues,
      undefined,
      undefined,
    );
    expect(guess).toMatchObject({ part: 'tire', place: 'left-front', value: { value: 105, unit: '[psi]' } });
  });
  test('is the condition of what was spoken of last where nothing is heard', async () => {
    const before = { part: 'tire', place: 'left-front' } as Observation;
    expect(
      await guessesOf(
        {
          words: 'It has a look about it.',
          start: 7.5,
          end: 10,
          lead: { start: 5, text: 'A hundred and five psi. ' },
        },
        cues,
        before,
        undefined,
      ),
    ).toEqual([{ part: 'tire', place: 'left-front', aspect: 'condition', value: undefined }]);
  });
});
