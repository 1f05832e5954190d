// Why: what can be said of any part at all, beside the aspects that are its own.
import type { Aspect } from './part.ts';

/** Aspects that every part has. Damage is an aspect of its own so that "no cracks, one chip" are two facts. */
export const generalAspects: readonly Aspect[] = [
  { id: 'condition', name: 'condition', kind: 'condition' },
  { id: 'operates', name: 'operates', kind: 'yes-no', good: 'yes' },
  { id: 'present', name: 'present', kind: 'yes-no' },
  { id: 'count', name: 'count', kind: 'count' },
  { id: 'type', name: 'type', kind: 'words' },
  { id: 'maker', name: 'maker', kind: 'words' },
  { id: 'age', name: 'age', kind: 'quantity', unit: 'a' },
  { id: 'crack', name: 'crack', kind: 'yes-no', good: 'no', say: ['crack', 'cracks', 'cracked', 'crazed', 'checking'] },
  { id: 'leak', name: 'leak', kind: 'yes-no', good: 'no', say: ['leak', 'leaks', 'leaking', 'drip', 'dripping', 'weeping', 'seeping'] },
  { id: 'damage', name: 'damage', kind: 'yes-no', good: 'no', say: ['damage', 'damaged', 'scrape', 'dent', 'tear', 'torn', 'chip', 'chips'] },
  { id: 'rust', name: 'rust', kind: 'yes-no', good: 'no', say: ['rust', 'corrosion', 'corroded'] },
  { id: 'stain', name: 'stain', kind: 'yes-no', good: 'no', say: ['stain', 'stains', 'stained'] },
  { id: 'noise', name: 'noise', kind: 'yes-no', good: 'no', say: ['noise', 'squeal', 'squeals', 'hum', 'pop', 'clunk'] },
  { id: 'smell', name: 'smell', kind: 'yes-no', good: 'no', say: ['smell', 'odor'] },
  { id: 'soft', name: 'soft spot', kind: 'yes-no', good: 'no', say: ['soft', 'spongy'] },
  { id: 'wear', name: 'wear', kind: 'condition', say: ['wear', 'worn'] },
  { id: 'claim', name: 'praise', kind: 'words' },
];
