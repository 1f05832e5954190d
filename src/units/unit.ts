// Why: every number in the house carries a unit, and only these units; anything else is refused at the door.

/** What a unit measures. Two units convert into one another only within one dimension. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'force'
  | 'pressure'
  | 'temperature'
  | 'temperature-difference'
  | 'time'
  | 'speed'
  | 'acceleration'
  | 'power'
  | 'energy'
  | 'torque'
  | 'rotation'
  | 'voltage'
  | 'current'
  | 'charge'
  | 'frequency'
  | 'resistance'
  | 'ratio'
  | 'flow'
  | 'economy'
  | 'sound'
  | 'angle'
  | 'density'
  | 'pressure-rate'
  | 'apparent-power'
  | 'energy-density';

interface UnitFact {
  readonly dimension: Dimension;
  /** Size in the dimension's base unit: base = value * factor + offset. */
  readonly factor: number;
  readonly offset?: number;
  /** What is printed after a number: "psi", "/32 in". */
  readonly symbol: string;
  /** What a person says: one, many. */
  readonly words: readonly [one: string, many: string];
}

const inch = 0.0254;
const foot = 0.3048;
const mile = 1609.344;
const pound = 0.45359237;
const gallon = 3.785411784e-3;
const btu = 1055.05585262;
const gravity = 9.80665;

/**
 * UCUM code -> what it is. Factors are exact by definition of the international units
 * (NIST SP 811, appendix B, from memory; checked against a UCUM library in unit.test.ts).
 */
export const units = {
  '[in_i]': { dimension: 'length', factor: inch, symbol: 'in', words: ['inch', 'inches'] },
  '[in_i]/32': {
    dimension: 'length',
    factor: inch / 32,
    symbol: '/32 in',
    words: ['thirty-second of an inch', 'thirty-seconds of an inch'],
  },
  '[ft_i]': { dimension: 'length', factor: foot, symbol: 'ft', words: ['foot', 'feet'] },
  '[mi_i]': { dimension: 'length', factor: mile, symbol: 'mi', words: ['mile', 'miles'] },
  mm: { dimension: 'length', factor: 0.001, symbol: 'mm', words: ['millimeter', 'millimeters'] },
  cm: { dimension: 'length', factor: 0.01, symbol: 'cm', words: ['centimeter', 'centimeters'] },
  m: { dimension: 'length', factor: 1, symbol: 'm', words: ['meter', 'meters'] },
  km: { dimension: 'length', factor: 1000, symbol: 'km', words: ['kilometer', 'kilometers'] },
  '[in_i]2': {
    dimension: 'area',
    factor: inch * inch,
    symbol: 'in²',
    words: ['square inch', 'square inches'],
  },
  '[ft_i]2': { dimension: 'area', factor: foot * foot, symbol: 'ft²', words: ['square foot', 'square feet'] },
  m2: { dimension: 'area', factor: 1, symbol: 'm²', words: ['square meter', 'square meters'] },
  '[ft_i]3': { dimension: 'volume', factor: foot ** 3, symbol: 'ft³', words: ['cubic foot', 'cubic feet'] },
  '[gal_us]': { dimension: 'volume', factor: gallon, symbol: 'gal', words: ['gallon', 'gallons'] },
  '[qt_us]': { dimension: 'volume', factor: gallon / 4, symbol: 'qt', words: ['quart', 'quarts'] },
  '[cup_us]': { dimension: 'volume', factor: gallon / 16, symbol: 'cup', words: ['cup', 'cups'] },
  L: { dimension: 'volume', factor: 0.001, symbol: 'L', words: ['liter', 'liters'] },
  '[lb_av]': { dimension: 'mass', factor: pound, symbol: 'lb', words: ['pound', 'pounds'] },
  kg: { dimension: 'mass', factor: 1, symbol: 'kg', words: ['kilogram', 'kilograms'] },
  N: { dimension: 'force', factor: 1, symbol: 'N', words: ['newton', 'newtons'] },
  '[lbf_av]': {
    dimension: 'force',
    factor: pound * gravity,
    symbol: 'lbf',
    words: ['pound-force', 'pounds-force'],
  },
  '[psi]': { dimension: 'pressure', factor: 6894.757293168, symbol: 'psi', words: ['psi', 'psi'] },
  kPa: { dimension: 'pressure', factor: 1000, symbol: 'kPa', words: ['kilopascal', 'kilopascals'] },
  bar: { dimension: 'pressure', factor: 1e5, symbol: 'bar', words: ['bar', 'bar'] },
  "[in_i'H2O]": {
    dimension: 'pressure',
    factor: 249.08891,
    symbol: 'in w.c.',
    words: ['inch of water column', 'inches of water column'],
  },
  '[psi]/min': {
    dimension: 'pressure-rate',
    factor: 6894.757293168 / 60,
    symbol: 'psi/min',
    words: ['psi a minute', 'psi a minute'],
  },
  '[degF]': {
    dimension: 'temperature',
    factor: 5 / 9,
    offset: 459.67 * (5 / 9),
    symbol: '°F',
    words: ['degree', 'degrees'],
  },
  Cel: {
    dimension: 'temperature',
    factor: 1,
    offset: 273.15,
    symbol: '°C',
    words: ['degree Celsius', 'degrees Celsius'],
  },
  K: { dimension: 'temperature', factor: 1, symbol: 'K', words: ['kelvin', 'kelvin'] },
  // UCUM has no code of its own for a difference of temperatures: the annotation keeps one from being read as a temperature.
  'K{difference}': {
    dimension: 'temperature-difference',
    factor: 1,
    symbol: 'K',
    words: ['kelvin difference', 'kelvin difference'],
  },
  '[degF]{difference}': {
    dimension: 'temperature-difference',
    factor: 5 / 9,
    symbol: '°F difference',
    words: ['degree difference', 'degrees difference'],
  },
  s: { dimension: 'time', factor: 1, symbol: 's', words: ['second', 'seconds'] },
  min: { dimension: 'time', factor: 60, symbol: 'min', words: ['minute', 'minutes'] },
  h: { dimension: 'time', factor: 3600, symbol: 'h', words: ['hour', 'hours'] },
  d: { dimension: 'time', factor: 86400, symbol: 'days', words: ['day', 'days'] },
  mo: { dimension: 'time', factor: 2629800, symbol: 'months', words: ['month', 'months'] },
  a: { dimension: 'time', factor: 31557600, symbol: 'years', words: ['year', 'years'] },
  '[mi_i]/h': {
    dimension: 'speed',
    factor: mile / 3600,
    symbol: 'mph',
    words: ['mile an hour', 'miles an hour'],
  },
  'km/h': {
    dimension: 'speed',
    factor: 1 / 3.6,
    symbol: 'km/h',
    words: ['kilometer an hour', 'kilometers an hour'],
  },
  'm/s': { dimension: 'speed', factor: 1, symbol: 'm/s', words: ['meter a second', 'meters a second'] },
  'm/s2': {
    dimension: 'acceleration',
    factor: 1,
    symbol: 'm/s²',
    words: ['meter a second squared', 'meters a second squared'],
  },
  '[ft_i]/s2': {
    dimension: 'acceleration',
    factor: foot,
    symbol: 'ft/s²',
    words: ['foot a second squared', 'feet a second squared'],
  },
  W: { dimension: 'power', factor: 1, symbol: 'W', words: ['watt', 'watts'] },
  kW: { dimension: 'power', factor: 1000, symbol: 'kW', words: ['kilowatt', 'kilowatts'] },
  '[HP]': {
    dimension: 'power',
    factor: 550 * pound * gravity * foot,
    symbol: 'hp',
    words: ['horsepower', 'horsepower'],
  },
  '[Btu]/h': {
    dimension: 'power',
    factor: btu / 3600,
    symbol: 'Btu/h',
    words: ['Btu an hour', 'Btu an hour'],
  },
  'V.A': { dimension: 'apparent-power', factor: 1, symbol: 'VA', words: ['volt-ampere', 'volt-amperes'] },
  'W.h': { dimension: 'energy', factor: 3600, symbol: 'Wh', words: ['watt-hour', 'watt-hours'] },
  'kW.h': { dimension: 'energy', factor: 3.6e6, symbol: 'kWh', words: ['kilowatt-hour', 'kilowatt-hours'] },
  '[Btu]': { dimension: 'energy', factor: btu, symbol: 'Btu', words: ['Btu', 'Btu'] },
  '[Btu]/[gal_us]': {
    dimension: 'energy-density',
    factor: btu / gallon,
    symbol: 'Btu/gal',
    words: ['Btu a gallon', 'Btu a gallon'],
  },
  'N.m': { dimension: 'torque', factor: 1, symbol: 'N·m', words: ['newton-meter', 'newton-meters'] },
  '[lbf_av].[ft_i]': {
    dimension: 'torque',
    factor: pound * gravity * foot,
    symbol: 'lb·ft',
    words: ['pound-foot', 'pound-feet'],
  },
  '{rev}/min': { dimension: 'rotation', factor: 1 / 60, symbol: 'rpm', words: ['rpm', 'rpm'] },
  Hz: { dimension: 'frequency', factor: 1, symbol: 'Hz', words: ['hertz', 'hertz'] },
  V: { dimension: 'voltage', factor: 1, symbol: 'V', words: ['volt', 'volts'] },
  mV: { dimension: 'voltage', factor: 0.001, symbol: 'mV', words: ['millivolt', 'millivolts'] },
  A: { dimension: 'current', factor: 1, symbol: 'A', words: ['amp', 'amps'] },
  'A.h': { dimension: 'charge', factor: 3600, symbol: 'Ah', words: ['amp-hour', 'amp-hours'] },
  Ohm: { dimension: 'resistance', factor: 1, symbol: 'Ω', words: ['ohm', 'ohms'] },
  '[gal_us]/min': {
    dimension: 'flow',
    factor: gallon / 60,
    symbol: 'gal/min',
    words: ['gallon a minute', 'gallons a minute'],
  },
  '[gal_us]/h': {
    dimension: 'flow',
    factor: gallon / 3600,
    symbol: 'gal/h',
    words: ['gallon an hour', 'gallons an hour'],
  },
  '[mi_i]/[gal_us]': {
    dimension: 'economy',
    factor: mile / gallon,
    symbol: 'mpg',
    words: ['mile a gallon', 'miles a gallon'],
  },
  '[lb_av]/[gal_us]': {
    dimension: 'density',
    factor: pound / gallon,
    symbol: 'lb/gal',
    words: ['pound a gallon', 'pounds a gallon'],
  },
  'kg/m3': {
    dimension: 'density',
    factor: 1,
    symbol: 'kg/m³',
    words: ['kilogram a cubic meter', 'kilograms a cubic meter'],
  },
  'g/mL': {
    dimension: 'density',
    factor: 1000,
    symbol: 'SG',
    words: ['specific gravity', 'specific gravity'],
  },
  'dB{A}': {
    dimension: 'sound',
    factor: 1,
    symbol: 'dB(A)',
    words: ['decibel, A-weighted', 'decibels, A-weighted'],
  },
  deg: { dimension: 'angle', factor: Math.PI / 180, symbol: '°', words: ['degree', 'degrees'] },
  '%': { dimension: 'ratio', factor: 0.01, symbol: '%', words: ['percent', 'percent'] },
  '1': { dimension: 'ratio', factor: 1, symbol: '', words: ['', ''] },
} as const satisfies Record<string, UnitFact>;

/** A UCUM code this house knows. */
export type Unit = keyof typeof units;

/** The codes as a list, for schemas and tables. */
export const unitCodes = Object.keys(units) as readonly Unit[];

/** True when the text is a UCUM code this house knows. */
export const isUnit = (code: string): code is Unit => Object.hasOwn(units, code);

/** What a unit is: dimension, factor, symbol, words. */
export const unitFact = (unit: Unit): UnitFact => units[unit];
