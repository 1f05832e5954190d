// Why: what a person typed must become exactly that value, or be refused with what to write instead.
import { describe, expect, test } from 'vitest';
import { aspectOf } from '../../catalogue/index.ts';
import { readSubject, readValue, senseOf, surenessOf } from './read-value.ts';

const tread = aspectOf('tire', 'tread_mid')!;
const crack = aspectOf('windshield', 'crack')!;
const volts = aspectOf('house_battery', 'rest_voltage')!;

describe('which part is meant', () => {
  test('a corner named in one word is the part with its place', () => {
    expect(readSubject('tire_lri', 'pressure_cold', undefined)).toMatchObject({
      part: 'tire',
      place: 'left-rear-inner',
    });
  });
  test('the letter of a unit in an aspect may be small', () => {
    expect(readSubject('ac_run', 'supply_f', undefined)).toMatchObject({ aspect: { id: 'supply_F' } });
  });
  test.each([
    ['tyre', 'tread_mid', undefined, 'part-unknown', 'tyre|tire'],
    ['tire', 'tred', undefined, 'aspect-unknown', undefined],
    ['tire', 'tread_mid', 'up there', 'place-unknown', undefined],
    ['__proto__', 'x', undefined, 'part-unknown', undefined],
    ['constructor', 'x', undefined, 'part-unknown', undefined],
  ])('%s.%s at %s: %s', (part, aspect, place, code, detail) => {
    expect(readSubject(part, aspect, place)).toMatchObject({ code, ...(detail ? { detail } : {}) });
  });
});

describe('what was read', () => {
  test.each([
    [
      tread,
      { value: '9', unit: '[in_i]/32', plusOrMinus: '1' },
      { is: 'quantity', value: 9, unit: '[in_i]/32', plusOrMinus: 1 },
    ],
    [tread, { value: '5..6', unit: '[in_i]/32' }, { is: 'quantity', value: 5, upTo: 6, unit: '[in_i]/32' }],
    [tread, { value: '7', unit: 'mm' }, { is: 'quantity', value: 7, unit: 'mm' }],
    [tread, { value: 'worn' }, { is: 'state', state: 'worn' }],
    [
      tread,
      { value: 'Unknown', note: 'inner not to be reached' },
      { is: 'unknown', why: 'inner not to be reached' },
    ],
    [crack, { value: 'yes' }, { is: 'state', state: 'yes' }],
    [aspectOf('tire', 'tin')!, { value: '2318' }, { is: 'text', text: '2318' }],
    [aspectOf('house_battery', 'chemistry')!, { value: 'agm' }, { is: 'text', text: 'AGM' }],
    [aspectOf('keys_set', 'ignition')!, { value: '2' }, { is: 'count', count: 2 }],
    [aspectOf('keys_set', 'ignition')!, { value: '3 of 12' }, { is: 'count', count: 3, of: 12 }],
    [volts, { value: '-0.5', unit: 'mV' }, { is: 'quantity', value: -0.5, unit: 'mV' }],
  ])('%# %o', (aspect, cells, value) => {
    expect(readValue(aspect, cells)).toEqual(value);
  });
  test.each([
    [tread, { value: '9' }, 'unit-missing'],
    [tread, { value: '9', unit: 'psi' }, 'unit-unknown'],
    [tread, { value: '9', unit: '[psi]' }, 'unit-dimension'],
    [tread, { value: '9,5', unit: '[in_i]/32' }, 'not-a-number'],
    [tread, { value: '1e999', unit: '[in_i]/32' }, 'not-a-number'],
    [tread, { value: '9', unit: '[in_i]/32', plusOrMinus: '-1' }, 'plus-or-minus-bad'],
    [tread, { value: 'plenty', unit: '[in_i]/32' }, 'not-a-number'],
    [crack, { value: 'sort of' }, 'word-unknown'],
    [aspectOf('house_battery', 'chemistry')!, { value: 'good' }, 'word-unknown'],
    [aspectOf('keys_set', 'ignition')!, { value: '1.5' }, 'not-a-count'],
    [volts, { value: '' }, 'value-missing'],
  ])('refuses %# %o', (aspect, cells, code) => {
    expect(readValue(aspect, cells)).toMatchObject({ code });
  });
  test('a hardly believable number is kept, and not believed much', () => {
    expect(surenessOf(volts, { is: 'quantity', value: 125, unit: 'V' }, 0.95)).toBe(0.5);
    expect(surenessOf(volts, { is: 'quantity', value: 12.5, unit: 'V' }, 0.95)).toBe(0.95);
  });
  test('good and bad news follow the aspect, not the word', () => {
    expect(senseOf(crack, { is: 'state', state: 'no' })).toEqual({ sense: 'absent', polarity: 'good' });
    expect(senseOf(crack, { is: 'state', state: 'yes' })).toEqual({ sense: 'defect', polarity: 'bad' });
    expect(senseOf(aspectOf('title_doc', 'title_in_hand')!, { is: 'state', state: 'no' })).toEqual({
      sense: 'operates',
      polarity: 'bad',
    });
    expect(senseOf(tread, { is: 'state', state: 'worn' })).toEqual({ sense: 'defect', polarity: 'bad' });
  });
});
