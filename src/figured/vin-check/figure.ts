// Why: a VIN with a wrong character sends a recall search and a title to another vehicle; its own check digit tells.

import { misreadCharacters } from '../../standards/trade-practice/misread-characters.ts';
import {
  vinCharacters,
  vinCheckDigit,
  vinLength,
} from '../../standards/us-code-of-federal-regulations/49-cfr-565-15-vin.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { plainVin, strangePositions, sumVin } from './read-vin.ts';

const taken = new Map<string, string[]>();
for (const [a, b] of misreadCharacters.rows) {
  taken.set(a, [...(taken.get(a) ?? []), b]);
  taken.set(b, [...(taken.get(b) ?? []), a]);
}

/** Common misreads of one character that would make the VIN pass. */
export function passingSwaps(vin: string): readonly string[] {
  return [...vin].flatMap((c, i) =>
    (taken.get(c) ?? []).flatMap((other) => {
      const swapped = vin.slice(0, i) + other + vin.slice(i + 1);
      return sumVin(swapped)?.passes ? [`position ${i + 1}: ${other} for ${c}`] : [];
    }),
  );
}

function work(have: Have): Worked | Refused {
  const vin = plainVin(String(have.vin));
  if (vin.length !== vinLength) return { refused: 'vin length', detail: String(vin.length) };
  const summed = sumVin(vin);
  const swaps = passingSwaps(vin);
  const swapNote =
    swaps.length > 0
      ? `Common misreads that would pass: ${swaps.join('; ')}. Look again; do not choose.`
      : 'No single common misread would make it pass.';
  if (!summed) {
    const strange = strangePositions(vin);
    return {
      value: 'fails',
      working: [
        `position ${strange.join(', ')} holds ${strange.map((p) => vin[p - 1]).join(', ')}, which no VIN has`,
      ],
      note: swapNote,
    };
  }
  const working = [
    `sum of values times weights = ${summed.sum}`,
    `${summed.sum} mod 11 = ${summed.sum % 11}, so position 9 must be ${summed.expected}; it is ${vin[8]}`,
  ];
  if (!summed.passes) return { value: 'fails', working, note: swapNote };
  return { value: 'passes', working, note: 'A VIN that passes may still be that of another vehicle.' };
}

export const vinCheck: FigureCard = {
  id: 'vin-check',
  asks: 'Has the VIN been read right?',
  gives: { part: 'vin_plate', aspect: 'vin_check' },
  needs: [{ name: 'vin', what: 'VIN', part: 'vin_plate', aspect: 'vin' }],
  formula:
    'sum over 17 positions of (value of the character x weight of the position), mod 11 = position 9 (10 is X)',
  cites: [vinCheckDigit, vinCharacters, misreadCharacters.citation],
  neglects:
    'One wrong character is nearly always caught; of two wrong ones about one pair in eleven is not. A VIN from before model year 1981 has no check digit.',
  work,
  checkedAgainst:
    'the sample of 49 CFR 565.15 Table VI and five published VINs (test/published/us-code-of-federal-regulations/vin.test.ts)',
};
