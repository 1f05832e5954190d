// Why: the check digit of a VIN, in one place for every figure that reads one.
import {
  vinLength,
  vinValues,
  vinWeights,
} from '../../standards/us-code-of-federal-regulations/49-cfr-565-15-vin.ts';

const values = new Map<string, number>(vinValues.rows);

/** The sum of values times weights, what it leaves, and the check character that would fit. */
export interface VinSum {
  readonly vin: string;
  readonly sum: number;
  readonly expected: string;
  readonly passes: boolean;
}

/** A VIN without the blanks and hyphens of a label, in capitals. */
export const plainVin = (text: string): string => text.toUpperCase().replace(/[\s-]/g, '');

/** Adds up a plain VIN; undefined when it is not 17 characters of the VIN's own alphabet. */
export function sumVin(vin: string): VinSum | undefined {
  if (vin.length !== vinLength) return undefined;
  let sum = 0;
  for (let i = 0; i < vinLength; i++) {
    const value = values.get(vin[i]!);
    if (value === undefined) return undefined;
    sum += value * vinWeights.rows[i]!;
  }
  const rest = sum % 11;
  const expected = rest === 10 ? 'X' : String(rest);
  return { vin, sum, expected, passes: vin[8] === expected };
}

/** Positions (from 1) that hold a character no VIN has. */
export const strangePositions = (vin: string): readonly number[] =>
  [...vin].flatMap((c, i) => (values.has(c) ? [] : [i + 1]));
