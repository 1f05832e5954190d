// Why: what people say for a unit, and which UCUM codes it may mean, likeliest first.
import type { Unit } from '../../units/unit.ts';
import { phrasesOf } from './phrase-index.ts';

/** A unit as said: the codes it may mean and what the number is to be multiplied with. */
export interface SaidUnit {
  readonly units: readonly Unit[];
  readonly times: number;
  /** "ten K": thousands of something, or kilowatts. */
  readonly loose?: true;
}

const u = (...units: Unit[]): SaidUnit => ({ units, times: 1 });
const table: Record<string, SaidUnit> = {};
const say = (said: SaidUnit, ...phrases: string[]): void => {
  for (const p of phrases) table[p] = said;
};

say(u('[in_i]'), 'inch', 'inches', 'inches long', 'of an inch', 'inches across', 'inches wide', 'an inch');
say(
  u('[in_i]/32'),
  'thirty seconds',
  '30 seconds',
  '32nds',
  'thirty second',
  '32 nds',
  'thirty twos',
  '32s',
  'thirty seconds of an inch',
  '30 seconds of an inch',
  '32nds of an inch',
  'over thirty two',
);
say(u('[ft_i]'), 'foot', 'feet', 'ft', 'foot long', 'feet long', 'footer');
say(u('[mi_i]'), 'mile', 'miles', 'mi', 'original miles');
say(u('mm'), 'millimeter', 'millimeters', 'millimetre', 'millimetres', 'mm', 'mil', 'mils', 'millis');
say(u('cm'), 'centimeter', 'centimeters', 'centimetre', 'centimetres', 'cm');
say(u('m'), 'meter', 'meters', 'metre', 'metres');
say(u('km'), 'kilometer', 'kilometers', 'kilometre', 'kilometres', 'km');
say(u('[in_i]2'), 'square inch', 'square inches');
say(u('[ft_i]2'), 'square foot', 'square feet');
say(u('[ft_i]3'), 'cubic foot', 'cubic feet', 'cubic');
say(u('[gal_us]'), 'gallon', 'gallons', 'gal', 'gallon tank', 'gals');
say(u('[qt_us]'), 'quart', 'quarts');
say(u('[cup_us]'), 'cup', 'cups');
say(u('L'), 'liter', 'liters', 'litre', 'litres');
say(u('[lb_av]', '[psi]', '[lbf_av]'), 'pound', 'pounds', 'lb', 'lbs');
say(u('kg'), 'kilo', 'kilos', 'kilogram', 'kilograms', 'kg');
say(
  u('[psi]'),
  'psi',
  'pounds of pressure',
  'pounds of air',
  'pounds per square inch',
  'pounds cold',
  'psi cold',
);
say(u('kPa'), 'kilopascal', 'kilopascals', 'kpa');
say(u('bar'), 'bar', 'bars');
say(
  u("[in_i'H2O]"),
  'inches water column',
  'inches of water column',
  'inches of water',
  'water column',
  'inches wc',
  'inch water column',
);
say(u('[psi]/min'), 'psi a minute', 'psi per minute', 'pounds a minute', 'psi in a minute');
say(u('[degF]', 'deg'), 'degree', 'degrees', 'degrees fahrenheit', 'fahrenheit');
say(u('Cel'), 'degrees celsius', 'celsius', 'centigrade', 'degrees centigrade', 'degrees c');
say(u('s'), 'second', 'seconds', 'sec', 'secs');
say(u('min'), 'minute', 'minutes', 'min', 'mins');
say(u('h'), 'hour', 'hours', 'hr', 'hrs', 'engine hours');
say(u('d'), 'day', 'days');
say({ units: ['d'], times: 7 }, 'week', 'weeks');
say(u('mo'), 'month', 'months');
say(u('a'), 'year', 'years', 'years old', 'year old');
say(u('[mi_i]/h'), 'miles an hour', 'miles per hour', 'mph', 'mile an hour');
say(
  u('km/h'),
  'kilometers an hour',
  'kilometers per hour',
  'kph',
  'km h',
  'kilometres per hour',
  'kilometers hour',
);
say(u('W'), 'watt', 'watts');
say(u('kW'), 'kilowatt', 'kilowatts', 'kw');
say(u('[HP]'), 'horse', 'horsepower', 'horses', 'hp', 'horse power');
say(u('[Btu]/h'), 'btu', 'btus', 'btu an hour');
say(u('W.h'), 'watt hour', 'watt hours');
say(u('kW.h'), 'kilowatt hour', 'kilowatt hours', 'kwh');
say(u('A.h'), 'amp hour', 'amp hours', 'ah', 'ampere hours');
say(u('[lbf_av].[ft_i]'), 'foot pound', 'foot pounds', 'pound feet', 'pounds feet', 'foot pounds of torque');
say(u('N.m'), 'newton meters', 'newton metres', 'newton meter');
say(u('{rev}/min'), 'rpm', 'rpms', 'revs');
say(u('Hz'), 'hertz', 'hz', 'hurts', 'cycles');
say(u('V'), 'volt', 'volts', 'vdc', 'vac', 'volts dc', 'volts ac', 'v');
say(u('mV'), 'millivolt', 'millivolts');
say(u('A'), 'amp', 'amps', 'ampere', 'amperes', 'cca', 'cold cranking amps', 'amps cca');
say(u('Ohm'), 'ohm', 'ohms');
say(u('[gal_us]/min'), 'gallons a minute', 'gallons per minute', 'gpm', 'gallon a minute');
say(u('[gal_us]/h'), 'gallons an hour', 'gallons per hour', 'gph', 'gallon an hour');
say(u('[mi_i]/[gal_us]'), 'miles per gallon', 'miles to the gallon', 'miles a gallon', 'mpg');
say(u('dB{A}'), 'decibel', 'decibels', 'db');
say(u('%'), 'percent', '%', 'per cent', 'pct');
say(u('deg'), 'degrees of angle');
say({ units: ['kW', '1'], times: 1, loose: true }, 'k');

/** Units by the words that follow a number. */
export const unitWords = phrasesOf(table);
/** Words that may stand for a bare "an": "an inch and a half". */
export const unitAfterAn = phrasesOf<Unit>({
  inch: '[in_i]',
  foot: '[ft_i]',
  gallon: '[gal_us]',
  hour: 'h',
  minute: 'min',
  year: 'a',
  quart: '[qt_us]',
});

/** Every unit that words may mean, once. */
export const saidUnits: readonly Unit[] = [...new Set(Object.values(table).flatMap((s) => s.units))];
