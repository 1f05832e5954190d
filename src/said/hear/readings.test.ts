// Why: numbers of systems as people read them off: bare, in pairs, with units said once, and none where there is none.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

/** Readings of a text as "part/aspect value unit". */
const read = (text: string): string[] =>
  hear([{ start: 0, end: text.split(' ').length * 0.4, text }])
    .observations.filter((o) => !o.retracted)
    .flatMap((o) =>
      o.value.is === 'quantity'
        ? [`${o.part}/${o.aspect} ${Math.round(o.value.value * 1000) / 1000} ${o.value.unit}`]
        : [],
    );

describe('bare readings by the part they are read off', () => {
  test.each([
    [
      'House batteries. First one is six three one, other one is 6.18.',
      ['house_battery/rest_voltage 6.31 V', 'house_battery/rest_voltage 6.18 V'],
    ],
    ['Start battery is twelve five.', ['chassis_battery/rest_voltage 12.5 V']],
    [
      'Generator. Unloaded one twenty-seven, with the microwave on one nineteen.',
      ['generator/volts_unloaded 127 V', 'generator/volts_loaded 119 V'],
    ],
    [
      'Water pump kicks on at twenty-eight and shuts off at forty-nine.',
      ['water_pump/cut_in 28 [psi]', 'water_pump/pressure 49 [psi]'],
    ],
    [
      "Engine is running. Oil pressure's fifty-one, water's one eighty-eight, volts fourteen one.",
      ['engine/oil_psi 51 [psi]', 'engine/coolant_F 188 [degF]', 'dash_gauges/volts 14.1 V'],
    ],
    [
      'The air is blowing, seventy-nine in and fifty-eight out.',
      ['ac_run/return_F 79 [degF]', 'ac_run/supply_F 58 [degF]'],
    ],
    [
      'Slide goes out in twenty-six seconds and back in thirty-one.',
      ['slide/extend_s 26 s', 'slide/retract_s 31 s'],
    ],
    [
      'Gray and black are forty-two apiece.',
      ['gray_tank/capacity 42 [gal_us]', 'black_tank/capacity 42 [gal_us]'],
    ],
  ])('%s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });
});

describe('units and instruments', () => {
  test('a unit said once carries on in the same breath', () => {
    expect(read('The slide pulls nineteen amps going and twenty-three coming home.')).toEqual([
      'slide/measured_current 19 A',
      'slide/measured_current 23 A',
    ]);
  });
  test('who reads in Celsius goes on in Celsius', () => {
    expect(read('Fridge is at 4 degrees Celsius. Freezer minus seventeen.')).toEqual([
      'refrigerator/box_F 4 Cel',
      'refrigerator/freezer_F -17 Cel',
    ]);
  });
  test('a heat gun says what the bare numbers are', () => {
    expect(read('Heat gun on the drums. Left front one fifty-two.')).toEqual([
      'brake_drum_rotor/measured_temperature 152 [degF]',
    ]);
  });
  test('a number that is put right is the same reading', () => {
    expect(read('Fridge is at thirty-six. No, wait, forty-four.')).toEqual(['refrigerator/box_F 44 [degF]']);
  });
  test('a hundred without its a, and half thousands', () => {
    expect(read('The breaker panel got hot, hundred and fifty-five degrees.')).toEqual([
      'electric_panel/max_temp_F 155 [degF]',
    ]);
    expect(read('The odometer shows eighty-one and a half thousand kilometers.')).toEqual([
      'odometer/reading 81500 km',
    ]);
  });
});

describe('what is no reading', () => {
  test('no pressure on a sofa', () => {
    expect(read('The sofa is fine. Forty psi.').filter((r) => r.startsWith('dinette_sofa'))).toEqual([]);
  });
  test('a load is not what is read', () => {
    expect(read('Shore power. With both airs on it sags to one thirteen.')).toEqual([
      'shore_power/volts 113 V',
    ]);
  });
  test('a bare number that cannot lie there', () => {
    expect(read('The refrigerator, four hundred.')).toEqual([]);
  });
});
