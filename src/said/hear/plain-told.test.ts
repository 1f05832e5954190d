// Why: blows, give in a floor, what is not there and what was also not tried are told in plain words, mostly by people who write none of them down.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

const said = (text: string): string[] =>
  hear([{ start: 0, end: 30, text }]).observations.map((o) => `${o.sense} ${o.part}/${o.aspect}`);

describe('things told in plain words', () => {
  test.each([
    ['The rear window took a bad whack.', 'defect windows_side/damage'],
    ['Under braking the brakes yank to the left.', 'defect brake_drum_rotor/operates'],
    ['Kitchen floor, no give anywhere.', 'absent floor_main/soft'],
    ['The fire bottle is not here.', 'absent extinguisher/present'],
    ['No spare fob.', 'absent keys_set/present'],
    ['The right rear tire is dry checked.', 'defect tire/crack'],
    ['the stove i did not try the furnace also not', 'unknown furnace_run/operates'],
    ['battery is one 12 volt it is eleven point four', 'quantity house_battery/count'],
    ['slides is three the big one go out fine', 'quantity slide/count'],
  ])('%s', (text, want) => {
    expect(said(text)).toContain(want);
  });

  test('one battery of twelve volts is not a hundred and twelve volts', () => {
    const values = hear([{ start: 0, end: 9, text: 'battery is one 12 volt' }]).observations.map((o) =>
      o.value.is === 'quantity' ? o.value.value : o.value.is === 'count' ? o.value.count : 0,
    );
    expect(values).not.toContain(112);
    expect(values).toContain(12);
  });
});
