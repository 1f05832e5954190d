// Why: what is said in pieces on the road is of the right part, and words that only sound like parts name none.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

const said = (text: string): string[] =>
  hear([{ start: 0, end: 30, text }]).observations.map((o) => {
    const v = o.value;
    const value = v.is === 'quantity' ? `${v.value}${v.upTo ? `-${v.upTo}` : ''} ${v.unit}` : o.sense;
    return `${o.part} ${o.aspect} ${value}`;
  });

describe('at the wheel', () => {
  test('speeds with what was felt', () => {
    const all = said(
      'Road test. Thirty, smooth. Fifty, nothing. Fifty-seven, shimmy in the wheel. Gone at sixty-four. None of it in the seat.',
    );
    expect(all.filter((x) => x === 'road_test_drive vibration absent').length).toBeGreaterThanOrEqual(2);
    expect(all).toContain('steering_gear vibration defect');
    expect(all).toContain('road_test_drive vibration_mph 57 [mi_i]/h');
    expect(all).toContain('road_test_drive vibration_mph 64 [mi_i]/h');
    expect(all).toContain('driver_seat vibration absent');
    expect(all.join()).not.toMatch(/missing|steering_gear missing/);
  });
  test('one shift that is bad, the others good', () => {
    const all = said('Road test. Two to three bangs, about three hundred rpm. The other shifts are smooth.');
    expect(all).toContain('transmission shift defect');
    expect(all).toContain('transmission measured_rotation 300 {rev}/min');
    expect(all).toContain('transmission shift condition');
  });
  test('the grade: revolutions, coolant, fan, brake, smoke', () => {
    const all = said(
      'Road test. On the grade, in third at twenty-one hundred. Coolant was one eighty-five at the bottom and it is two oh four at the top. Fan came on at two hundred. No smoke behind us. Going down, engine brake on high, it holds thirty-eight.',
    );
    expect(all).toContain('engine engine_speed 2100 {rev}/min');
    expect(all).toContain('engine coolant_F 204 [degF]');
    expect(all).toContain('radiator_cac measured_temperature 200 [degF]');
    expect(all).toContain('turbo_exhaust smoke absent');
    expect(all.join()).toMatch(/measured_speed 38 \[mi_i\]\/h/);
  });
  test('the parking brake held, not the engine', () => {
    expect(said("Park brake set, in drive, eleven hundred rpm, it won't budge.")).toEqual([
      'parking_brake measured_rotation 1100 {rev}/min',
      'parking_brake operates operates',
    ]);
  });
  test('hubs and drums by the gun, each at its place', () => {
    expect(said('Brake drums with the gun, left rear two twelve, right rear one ninety.')).toEqual([
      'brake_drum_rotor measured_temperature 212 [degF]',
      'brake_drum_rotor measured_temperature 190 [degF]',
    ]);
  });
});

describe('words that name no part', () => {
  test.each([
    ['Generator. Black smoke at start.', /black_tank/],
    ['Tires. Light checking on both fronts.', /lights_led/],
    ['Front air, twenty degree split.', /crack/],
    ['Tires. Nine in the outside groove.', /wear/],
  ])('%s', (text, none) => {
    expect(said(text).join()).not.toMatch(none);
  });
});

describe('put off, and over what', () => {
  test.each([
    ['Shock absorbers I skipped.', 'shocks', 'unknown'],
    ['Tires. Left side duals wait for the hoist.', 'tire', 'unknown'],
    ['Road test, tomorrow.', 'road_test_drive', 'unknown'],
    ["There's a water stain above the dinette.", 'ceiling', 'stain'],
    ['The antenna boot gone.', 'antenna_sat', 'missing'],
    ['Engine. Oil on the dipstick, add line.', 'engine_oil', 'level'],
    ['The smoke alarm is out of life.', 'smoke_alarm', 'age'],
    ['Odo forty-one two sixty.', 'odometer', '41260'],
  ])('%s', (text, part, what) => {
    expect(
      said(text)
        .filter((x) => x.startsWith(`${part} `))
        .join(),
    ).toMatch(what);
  });
  test('the weather is no reading', () => {
    expect(said("It's forty-eight degrees and drizzling.").join()).not.toMatch(/48/);
  });
});
