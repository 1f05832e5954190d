// Why: the weight that stands for a person where seats are counted against a cargo label.
import { day } from '../../units/day.ts';
import type { Source } from '../standard.ts';
import type { Supposed } from '../supposed.ts';

const source: Source = {
  id: 'nhtsa-08-003469',
  title: 'Interpretation 08-003469drn-rev, belted seats and cargo capacity',
  publisher: 'National Highway Traffic Safety Administration',
  edition: 'undated copy',
  standing: 'law',
  address: 'https://nhtsa.gov/es/interpretations/08-003469drn-rev',
  scope:
    'An interpretation of FMVSS 120, addressed to makers. Read as an excerpt. People weigh what they weigh.',
};

/** What a person is counted as. The spread is ours. */
export const personWeight: Supposed = {
  id: 'person-weight',
  what: 'weight of a person',
  value: 150,
  unit: '[lb_av]',
  plusOrMinus: 20,
  citations: [
    {
      source,
      clause: 'letter',
      says: 'Belted seats times 150 lb may not exceed the labelled capacity.',
      read: day('2026-11-24'),
    },
  ],
};
