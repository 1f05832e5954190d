// Why: the sheets of a unit, in the order in which a walk becomes a listing.
import type { ComponentType } from 'react';
import type { Entry } from '../../../said/entry.ts';
import { Add } from '../add/add.tsx';
import { Figures } from '../figures/figures.tsx';
import { Findings } from '../findings/findings.tsx';
import { Listing } from '../listing/listing.tsx';
import { Review } from '../review/review.tsx';

export interface Sheet {
  readonly id: string;
  readonly name: string;
  readonly content: ComponentType;
}

export const sheets: readonly [Sheet, ...Sheet[]] = [
  { id: 'add', name: 'Add', content: Add },
  { id: 'review', name: 'Review', content: Review },
  { id: 'findings', name: 'Findings', content: Findings },
  { id: 'figures', name: 'Figures', content: Figures },
  { id: 'listing', name: 'Listing', content: Listing },
];

/** The sheet at an address; without one, the first that has something to show. */
export function sheetOf(id: string | undefined, entries: readonly Entry[]): Sheet {
  const named = sheets.find((s) => s.id === id);
  if (named) return named;
  const walked = entries.some((e) => e.kind === 'observation');
  return sheets.find((s) => s.id === (walked ? 'findings' : 'add')) ?? sheets[0];
}
