// Why: papers and eyes answer through one door; it must say when they disagree and what the unit cannot have.
import { describe, expect, test } from 'vitest';
import { coach } from '../../test/sample-entries.ts';
import type { Entry } from '../said/entry.ts';
import { day } from '../units/day.ts';
import { factsOf } from './facts-of.ts';
import { fold } from './fold.ts';

const says = coach();
const facts = (...log: Entry[]) => factsOf(fold(log), day('2026-11-24'));

describe('papers', () => {
  test('alone they answer, with the doubt that only paper says so', () => {
    const year = facts(says.unit(1, { year: 2016 })).get('coach', 'year');
    expect(year).toMatchObject({
      standing: 'known',
      value: { text: '2016' },
      doubts: ['on paper only'],
      evidence: [],
    });
  });
  test('they give way to an observation that agrees', () => {
    const seen = says.typed(2, 'coach', 'maker', { is: 'text', text: 'north fork' });
    expect(facts(says.unit(1, { maker: 'North Fork' }), seen).get('coach', 'maker')).toMatchObject({
      standing: 'known',
      doubts: [],
      evidence: [seen],
    });
  });
  test('they are a side of a conflict with one that does not', () => {
    const seen = says.typed(2, 'coach', 'year', { is: 'text', text: '2015' });
    const year = facts(says.unit(1, { year: 2016 }), seen).get('coach', 'year');
    expect(year).toMatchObject({ standing: 'conflict', value: { text: '2015' } });
    expect(year!.sides.map((s) => s.evidence.length)).toEqual([1, 0]);
  });
  test('they answer where a person could not', () => {
    const cannot = says.typed(2, 'coach', 'year', { is: 'unknown', why: 'label gone' });
    expect(facts(says.unit(1, { year: 2016 }), cannot).get('coach', 'year')).toMatchObject({
      value: { text: '2016' },
      evidence: [cannot],
    });
  });
});

describe('the door', () => {
  const log = [
    says.unit(1, { vehicle: 'class-c', equipment: { slide: false } }),
    { ...says.reading(2, 'tire', 'tread_mid', 7, '[in_i]/32'), place: 'left-front' },
    { ...says.reading(3, 'tire', 'tread_mid', 9, '[in_i]/32'), place: 'right-front' },
    says.reading(4, 'tire', 'age', 5, 'a'),
  ];
  const door = facts(...log);
  test('get answers at a place, or of no particular place, and never for another place', () => {
    expect(door.get('tire', 'tread_mid', 'left-front')?.value).toMatchObject({ value: 7 });
    expect(door.get('tire', 'tread_mid')).toBeUndefined();
    expect(door.get('tire', 'age')?.value).toMatchObject({ value: 5 });
    expect(door.get('tire', 'age', 'left-front')).toBeUndefined();
  });
  test('all, of and every hold what they say', () => {
    expect(door.all('tire', 'tread_mid').map((f) => f.place)).toEqual(['left-front', 'right-front']);
    expect(door.of('tire')).toHaveLength(3);
    expect(door.every()).toHaveLength(3);
    expect(door.of('roof_membrane')).toEqual([]);
  });
  test('the unit may not have what is switched off, what goes with it, what is of another kind, or what nobody has heard of', () => {
    expect(['tire', 'slide', 'slide_seals', 'pin_box', 'no_such_part'].map((p) => door.mayHave(p))).toEqual([
      true,
      false,
      false,
      false,
      false,
    ]);
  });
});
