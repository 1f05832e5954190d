// Why: parts by their everyday names, words of several meanings, and what a thing is and who made it.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';
import type { HeardObservation } from './heard.ts';

const heard = (text: string): readonly HeardObservation[] => hear([{ start: 0, end: 20, text }]).observations;
const parts = (text: string): readonly string[] => heard(text).map((o) => o.part);
const identity = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    heard(text)
      .filter((o) => o.sense === 'identity')
      .map((o) => [`${o.part}/${o.aspect}`, o.value.is === 'text' ? o.value.text : '']),
  );

describe('names of parts', () => {
  test.each([
    ['The genny is leaking.', 'generator'],
    ['The sniffer is dead.', 'lp_alarm'],
    ['Our changeover box is burnt.', 'transfer_switch'],
    ['The engine battery is swollen.', 'chassis_battery'],
    ['The nightstand is scratched.', 'cabinets'],
    ["The pilot's chair is torn.", 'driver_seat'],
    ['The tank handle is broken.', 'dump_valves'],
    ['The tail cap is cracked.', 'rear_cap'],
  ])('%s', (said, part) => {
    expect(parts(said)).toContain(part);
  });

  test('an observation carries the words by which its part was named', () => {
    expect(heard('The shelf below the sink is swollen.').map((o) => o.named)).toContain(
      'shelf below the sink',
    );
    expect(heard('The Tail cap, that is cracked.')[0]?.named).toBe('Tail cap');
  });
});

describe('words of several meanings', () => {
  test('a blade is that of the cord or of the wiper', () => {
    expect(parts('Here is the shore cord. One blade is burnt.')).toContain('shore_cord');
    expect(parts('Wipers are on. One blade is torn.')).toContain('wipers_washers');
  });

  test('a bag holds up the coach, unless the talk is about the dash', () => {
    expect(parts('Under here the suspension. The left bag is cracked.')).toContain('suspension_air');
  });
});

describe('what the coach is', () => {
  test.each([
    ['It is an oh nine Fellmark Dunebird, the thirty-one K L.', '2009', 'Fellmark', 'Dunebird', '31KL'],
    [
      'So this is the Fellmark Dunebird, twenty fifteen, floor plan 28 R.',
      '2015',
      'Fellmark',
      'Dunebird',
      '28R',
    ],
    ['Nineteen Fellmark, the Dunebird, they call it the 33 B S.', '2019', 'Fellmark', 'Dunebird', '33BS'],
  ])('%s', (said, year, maker, model, plan) => {
    expect(identity(said)).toMatchObject({
      'coach/year': year,
      'coach/maker': maker,
      'coach/model': model,
      'coach/floor_plan': plan,
    });
  });

  test('a gasser, and the year behind the words for it', () => {
    expect(identity('Model year on it is 2014 and it is a gasser.')).toMatchObject({
      'coach/year': '2014',
      'engine/fuel': 'gas',
    });
  });

  test('a person who says who he is makes no coach', () => {
    expect(identity('Good morning, this is Gerwin, and here we go.')).toEqual({});
  });

  test('the end of a VIN, and a serial number that is of another part', () => {
    expect(identity('The VIN ends in four four oh nine one seven.')).toEqual({ 'vin_plate/vin': '440917' });
    expect(identity('The generator, its serial ends 4471.')).toEqual({ 'generator/serial': '4471' });
  });
});

describe('makers', () => {
  test.each([
    ['The generator is a Fellmark.', 'generator/maker', 'Fellmark'],
    ['Tires. Corvandos, all six.', 'tire/maker', 'Corvandos'],
    ['It sits on a Fellmark chassis.', 'chassis_label/maker', 'Fellmark'],
  ])('%s', (said, key, maker) => {
    expect(identity(said)[key]).toBe(maker);
  });

  test.each([
    'The generator. Unloaded, it runs.',
    'The generator. Whoa, that is loud.',
    "Go look at the Fellmark's generator.",
  ])('no maker: %s', (said) => {
    expect(Object.keys(identity(said)).filter((k) => k.endsWith('/maker'))).toEqual([]);
  });
});
