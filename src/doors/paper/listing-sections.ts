// Why: the listing reads in the same order and under the same headings as a page and as plain text.
import type { Claim, Listing } from '../../published/document.ts';

export interface ListingSection {
  readonly title: string;
  readonly claims: readonly Claim[];
}

const headings: readonly (readonly [title: string, ...of: Claim['section'][]])[] = [
  ['What it is', 'identity'],
  ['What works, and what was read', 'house', 'chassis', 'praise'],
  ['What is wrong with it', 'disclosure'],
  ['What was not checked (the report names every part)', 'not checked'],
];

/** The sections of a listing that hold a sentence, in reading order; the first lines and the price stand before them. */
export const listingSections = ({ claims }: Listing): readonly ListingSection[] =>
  headings
    .map(([title, ...of]) => ({
      title,
      claims: of.flatMap((section) => claims.filter((c) => c.section === section)),
    }))
    .filter((s) => s.claims.length > 0);

/** The first lines: what it is, how much is wrong, when it was walked; then the price. */
export const firstLines = ({ claims }: Listing): readonly Claim[] =>
  (['headline', 'money'] as const).flatMap((section) => claims.filter((c) => c.section === section));
