// Why: "one" counts, points or stands for a thing; only the first is a fact.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

const counts = (text: string): string[] =>
  hear([{ start: 0, end: 20, text }])
    .observations.filter((o) => o.value.is === 'count' && !o.retracted)
    .map((o) => `${o.part} ${o.value.is === 'count' ? o.value.count : ''}`);

describe('counts', () => {
  test('one that counts', () => {
    expect(counts('There is just the one slide.')).toEqual(['slide 1']);
    expect(counts("There's the one house battery in the tray.")).toEqual(['house_battery 1']);
    expect(counts("The slide's on this side, there's only the one.")).toEqual(['slide 1']);
  });
  test('one that points or stands for a thing', () => {
    expect(counts('The propane alarm is fine. The carbon monoxide one is dead.')).toEqual([]);
    expect(counts('The slide on the left, the one with the sofa, is slow.')).toEqual([]);
  });
  test('more than one', () => {
    expect(counts('Batteries, four of them.')).toEqual(['house_battery 4']);
    expect(counts('Slides are three.')).toEqual(['slide 3']);
    expect(counts('The other three slides are fine.')).toEqual([]);
  });
  test('how often it had to be tried', () => {
    expect(counts('The generator took four tries to start.')).toEqual(['generator 4']);
    expect(counts('The furnace lit on the first try.')).toEqual([]);
  });
  test('things counted by what they are in', () => {
    expect(counts('Two bottles of propane on the tongue.')).toEqual(['lp_tank 2']);
    expect(counts('Two A/Cs on the roof.')).toEqual(['ac_roof 2']);
    expect(counts('House batteries, two flooded.')).toEqual(['house_battery 2']);
  });
});
