// Why: units as people write them behind a number, so that "13.5k btu" and "105 psi" are read without choosing from a list.
import { type Dimension, type Unit, unitCodes, unitFact } from '../../../units/unit.ts';

/** Written name -> the codes it may mean, likeliest first; the one that fits what is asked is taken. */
const table: Readonly<Record<string, readonly Unit[]>> = {
  '"': ['[in_i]'],
  "'": ['[ft_i]'],
  '32nd': ['[in_i]/32'],
  '32nds': ['[in_i]/32'],
  '/32': ['[in_i]/32'],
  '/32 in': ['[in_i]/32'],
  lb: ['[lb_av]', '[psi]', '[lbf_av]'],
  lbs: ['[lb_av]', '[psi]', '[lbf_av]'],
  pound: ['[lb_av]', '[psi]', '[lbf_av]'],
  pounds: ['[lb_av]', '[psi]', '[lbf_av]'],
  kilo: ['kg'],
  kilos: ['kg'],
  btu: ['[Btu]/h', '[Btu]'],
  btus: ['[Btu]/h', '[Btu]'],
  'btu/h': ['[Btu]/h'],
  'btu/hr': ['[Btu]/h'],
  btuh: ['[Btu]/h'],
  f: ['[degF]', '[degF]{difference}'],
  '°f': ['[degF]', '[degF]{difference}'],
  '°': ['[degF]', '[degF]{difference}', 'deg'],
  deg: ['[degF]', '[degF]{difference}', 'deg'],
  degree: ['[degF]', '[degF]{difference}', 'deg'],
  degrees: ['[degF]', '[degF]{difference}', 'deg'],
  fahrenheit: ['[degF]', '[degF]{difference}'],
  c: ['Cel', 'K{difference}'],
  '°c': ['Cel', 'K{difference}'],
  celsius: ['Cel', 'K{difference}'],
  sec: ['s'],
  secs: ['s'],
  mins: ['min'],
  hr: ['h'],
  hrs: ['h'],
  yr: ['a'],
  yrs: ['a'],
  kph: ['km/h'],
  'mi/h': ['[mi_i]/h'],
  'w.c.': ["[in_i'H2O]"],
  'in wc': ["[in_i'H2O]"],
  wc: ["[in_i'H2O]"],
  'psi/min': ['[psi]/min'],
  'psi a minute': ['[psi]/min'],
  'psi per minute': ['[psi]/min'],
  vdc: ['V'],
  vac: ['V'],
  millivolts: ['mV'],
  ampere: ['A'],
  amperes: ['A'],
  cca: ['A'],
  ohms: ['Ohm'],
  horses: ['[HP]'],
  gpm: ['[gal_us]/min'],
  gph: ['[gal_us]/h'],
  gals: ['[gal_us]'],
  'sq ft': ['[ft_i]2'],
  'sq in': ['[in_i]2'],
  'cu ft': ['[ft_i]3'],
  'ft-lb': ['[lbf_av].[ft_i]'],
  'ft lb': ['[lbf_av].[ft_i]'],
  db: ['dB{A}'],
  pct: ['%'],
};

const names: ReadonlyMap<string, readonly Unit[]> = new Map([
  ...unitCodes
    .filter((u) => u !== '1')
    .flatMap((u): [string, Unit][] =>
      [unitFact(u).symbol, ...unitFact(u).words, u].map((name) => [name.toLowerCase(), u]),
    )
    .reduce((all, [name, u]) => all.set(name, [...(all.get(name) ?? []), u]), new Map<string, Unit[]>()),
  ...Object.entries(table),
]);
/** Where capital and small letters are different units. */
const exact: Readonly<Record<string, readonly Unit[]>> = { MV: [], mV: ['mV'], K: ['K', 'K{difference}'] };

/** The unit a written name means where this dimension is asked for; a unit of another dimension when it can only be that. */
export function unitNamed(name: string, asked: Dimension): Unit | undefined {
  const plain = name.trim().replace(/\s+/g, ' ');
  const may =
    exact[plain] ?? names.get(plain.toLowerCase()) ?? names.get(plain.toLowerCase().replace(/\.$/, ''));
  return may?.find((u) => unitFact(u).dimension === asked) ?? may?.[0];
}

const dimensionWords: Readonly<Record<Dimension, string>> = {
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  mass: 'a weight',
  force: 'a force',
  pressure: 'a pressure',
  temperature: 'a temperature',
  'temperature-difference': 'a difference of temperatures',
  time: 'a time',
  speed: 'a speed',
  acceleration: 'an acceleration',
  power: 'a power',
  energy: 'an amount of energy',
  torque: 'a torque',
  rotation: 'a speed of turning',
  voltage: 'a voltage',
  current: 'a current',
  charge: 'a charge',
  frequency: 'a frequency',
  resistance: 'a resistance',
  ratio: 'a plain number or a share',
  flow: 'a flow',
  economy: 'miles a gallon',
  sound: 'a loudness',
  angle: 'an angle',
  density: 'a density',
  'pressure-rate': 'a loss of pressure in a time',
  'apparent-power': 'an apparent power',
  'energy-density': 'energy in a volume',
};

/** "a pressure": what a unit measures, in words. */
export const measures = (unit: Unit): string => dimensionWords[unitFact(unit).dimension];
