// Why: the words of places, as data.
import { wordTable } from './word-table.ts';
// Trade usage (common practice, no source).

export const sides: Readonly<Record<string, 'left' | 'right'>> = wordTable({
  left: 'left',
  driver: 'left',
  drivers: 'left',
  street: 'left',
  road: 'left',
  right: 'right',
  passenger: 'right',
  passengers: 'right',
  curb: 'right',
  curbside: 'right',
  roadside: 'left',
  offdoor: 'left',
  lf: 'left',
  lr: 'left',
  rf: 'right',
  rr: 'right',
});
export const ends: Readonly<Record<string, 'front' | 'rear' | 'middle'>> = wordTable({
  front: 'front',
  rear: 'rear',
  back: 'rear',
  middle: 'middle',
  center: 'middle',
  centre: 'middle',
  steer: 'front',
  steers: 'front',
  drive: 'rear',
  drives: 'rear',
  fronts: 'front',
  rears: 'rear',
  backs: 'rear',
  duals: 'rear',
  dual: 'rear',
  lf: 'front',
  lr: 'rear',
  rf: 'front',
  rr: 'rear',
  steering: 'front',
});
export const depths: Readonly<Record<string, 'inner' | 'outer'>> = wordTable({
  inner: 'inner',
  inside: 'inner',
  outer: 'outer',
  outside: 'outer',
  inners: 'inner',
  outers: 'outer',
});
export const spots: Readonly<Record<string, string>> = wordTable({
  bathroom: 'bath',
  bath: 'bath',
  bedroom: 'bedroom',
  galley: 'galley',
  kitchen: 'galley',
  entry: 'entry',
  hallway: 'hall',
  cab: 'cab',
  cockpit: 'cab',
  dash: 'dash',
  tag: 'tag',
  bunkroom: 'bunks',
  loft: 'loft',
  living: 'living',
  closet: 'closet',
  outside: 'outside',
  exterior: 'outside',
  upper: 'upper',
  lower: 'lower',
});
export const sideNeeds = new Set(['driver', 'drivers', 'passenger', 'passengers', 'street', 'road', 'curb']);
export const fillers = new Set(["'s", 'side', 'hand', 'the', 'on', 'corner', 'one', 'and']);
export const notAfter = new Set([
  'axle',
  'wheel',
  'cap',
  'view',
  'bumper',
  'vent',
  'seat',
  'door',
  'end',
  'hitch',
  'window',
]);

/** Numbered things that are places: "leg two", "battery two", "axle one". */
export const numbered = new Set('leg battery axle zone pack bank bay cylinder line channel'.split(' '));
export const numberWord: Readonly<Record<string, string>> = wordTable({
  one: 'one',
  two: 'two',
  three: 'three',
  four: 'four',
  five: 'five',
  six: 'six',
  '1': 'one',
  '2': 'two',
  '3': 'three',
  '4': 'four',
  '5': 'five',
  '6': 'six',
  a: 'a',
  b: 'b',
  c: 'c',
});
