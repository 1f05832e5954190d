// Why: of the parts a failure may be said of, the one that can fail in that way is meant; the same for what is denied.
import { hasTrait } from './part-traits.ts';
import { isPlausible } from './plausible.ts';
import { wordTable } from './word-table.ts';

const needs: Readonly<Record<string, readonly string[]>> = wordTable({
  'leak/leaking': ['fluid', 'shell'],
  'leak/dripping': ['fluid', 'shell'],
  'leak/weeping': ['fluid'],
  crack: ['panel', 'glass', 'rubber', 'metal', 'cloth', 'surface'],
  'damage/chipped': ['panel', 'glass', 'metal'],
  'damage/torn': ['cloth', 'rubber', 'surface', 'panel'],
  'damage/dented': ['panel', 'metal', 'rubber'],
  'damage/bent': ['panel', 'metal', 'moving', 'rubber', 'cloth'],
  'damage/scratched': ['panel', 'glass', 'surface', 'cloth', 'metal', 'rubber'],
  'damage/broken': ['panel', 'glass', 'metal', 'moving', 'rubber', 'electric', 'machine'],
  'damage/burnt': ['cloth', 'panel', 'electric', 'surface'],
  rust: ['metal'],
  flaking: ['metal', 'cloth', 'panel', 'surface'],
  stain: ['surface', 'cloth', 'panel', 'glass', 'rubber'],
  wet: ['surface', 'cloth', 'shell'],
  soft: ['surface', 'cloth', 'moving', 'rubber'],
  flex: ['surface', 'panel', 'metal', 'moving'],
  'soft spot': ['surface', 'panel'],
  delamination: ['surface', 'panel', 'glass'],
  separated: ['panel', 'surface', 'shell', 'rubber', 'cloth', 'metal', 'moving', 'glass', 'electric'],
  loose: ['panel', 'moving', 'metal', 'rubber', 'electric', 'road', 'cloth', 'machine', 'fluid'],
  peel: ['panel', 'cloth', 'rubber', 'surface'],
  faded: ['panel', 'cloth', 'rubber', 'glass', 'surface'],
  fogged: ['glass'],
  wear: ['wearing', 'cloth', 'rubber', 'machine', 'moving'],
  age: ['dated', 'rubber'],
  level: ['levelled'],
  smell: ['smells'],
  smoke: ['smokes'],
  noise: ['machine', 'moving', 'electric', 'road', 'fluid', 'wearing', 'metal', 'surface'],
  'heat/overheating': ['machine', 'road', 'electric'],
  'heat/burnt': ['electric', 'machine', 'surface', 'road'],
  swelling: ['electric', 'surface', 'rubber', 'panel'],
  sag: ['surface', 'moving', 'cloth', 'panel', 'road', 'metal'],
  reading: ['reading', 'electric'],
  cooling: ['machine', 'electric', 'road'],
  lit: ['electric', 'reading', 'machine'],
  'operates/tripped': ['electric'],
  'operates/surging': ['machine', 'electric'],
  'operates/drifting': ['moving', 'fluid', 'reading', 'road', 'electric'],
  'operates/lagging': ['moving', 'machine', 'electric', 'road'],
  'operates/vibrating': ['machine', 'road', 'moving'],
  'operates/pulling': ['road'],
  'operates/discharged': ['electric', 'rubber', 'fluid'],
  'operates/fails': ['electric', 'machine', 'moving', 'fluid', 'wearing'],
  'operates/stuck': ['moving', 'machine', 'electric', 'fluid', 'reading', 'wearing'],
  'operates/sticky': ['moving', 'machine', 'electric', 'reading', 'road'],
  'operates/intermittent': ['electric', 'machine', 'moving', 'reading', 'road'],
  speed: ['electric', 'machine', 'moving', 'fluid'],
  strength: ['electric', 'machine', 'moving', 'fluid', 'road'],
  clogged: ['fluid', 'machine', 'shell', 'surface', 'electric', 'panel'],
});

/** True when this can go wrong with the part. */
export function suits(part: string, aspect: string, state: string): boolean {
  const any = needs[`${aspect}/${state}`] ?? needs[aspect];
  return isPlausible(part, aspect) && (any === undefined || hasTrait(part, any));
}
