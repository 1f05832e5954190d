// Why: stamped and photographed characters are confused in well-known pairs; nobody publishes them, the trade knows them.
import type { Table } from '../standard.ts';
import { practice } from './practice.ts';

/** Characters that are commonly taken for one another on a plate, either way round. */
export const misreadCharacters: Table<readonly [string, string]> = {
  id: 'misread-characters',
  what: 'characters commonly taken for one another on a plate',
  citation: practice(
    'B and 8, S and 5, G and 6, Z and 2, D and 0, O and 0, Q and 0, I and 1, U and V are taken for one another.',
  ),
  rows: [
    ['B', '8'],
    ['S', '5'],
    ['G', '6'],
    ['Z', '2'],
    ['D', '0'],
    ['O', '0'],
    ['Q', '0'],
    ['I', '1'],
    ['U', 'V'],
  ],
};
