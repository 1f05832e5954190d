// Why: a wrong character in the number sends a recall search and a title to another vehicle.
import { vinCheckDigit } from '../../standards/us-code-of-federal-regulations/49-cfr-565-15-vin.ts';
import { wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const vinCheck: Rule = {
  id: 'vin-check',
  asks: 'Does the VIN pass its own check digit?',
  why: 'A wrong VIN means the wrong title, recalls and price.',
  part: 'vin_plate',
  aspect: 'vin_check',
  look: 'Read the number off the plate, the label and the title, letter by letter.',
  minutes: 2,
  steps: [
    { weight: 'unlawful', mustBe: 'none of', words: ['fails'], cites: [vinCheckDigit] },
    { weight: 'unlawful', mustBe: 'one of', words: ['passes'], cites: [vinCheckDigit] },
  ],
  says: {
    meets:
      'The number agrees with its own check digit. A number that does may still be that of another vehicle.',
    fails:
      'The number does not agree with its own check digit: a character has been misread, or the number is wrong.',
    cannotTell: 'The number was not read whole, or not surely: read it again.',
    notSeen: 'The VIN has not been read.',
  },
  next: 'Read it again off the plate, and against the title and the label, before a recall search or a sale.',
  who: 'office',
  proofs: wordProofs(
    [
      ['passes', 'meets', 'sound'],
      ['fails', 'fails', 'repair'],
    ],
    true,
  ),
};
