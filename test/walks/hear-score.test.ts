// Why: the quality of hearing is a number, measured on annotated walks by a script that does not know how the hearing works.
import { describe, expect, test } from 'vitest';
import { measureWalk, type WalkScore, withoutStops } from './walk-score.ts';

const scoreOf = (walk: string, change?: (vtt: string) => string): WalkScore => measureWalk(walk, change).S;

/** Floors a little under what is reached; all four walks were looked at while the hearing was built. Raise them, never lower them. */
const floors: readonly {
  readonly walk: string;
  readonly least: Partial<Record<keyof WalkScore, number>>;
  readonly distractors: number;
}[] = [
  {
    walk: 'w1',
    least: {
      recall: 0.96,
      recall_must: 0.95,
      precision: 0.92,
      position_accuracy: 0.64,
      unit_accuracy: 0.98,
      hedged_recall: 0.95,
    },
    distractors: 0,
  },
  {
    walk: 'w2',
    least: {
      recall: 0.96,
      recall_must: 0.94,
      precision: 0.94,
      position_accuracy: 0.8,
      unit_accuracy: 0.97,
      hedged_recall: 0.95,
    },
    distractors: 1,
  },
  {
    walk: 'w3',
    least: {
      recall: 0.96,
      recall_must: 0.98,
      precision: 0.95,
      position_accuracy: 0.95,
      unit_accuracy: 0.98,
      hedged_recall: 0.7,
    },
    distractors: 0,
  },
  {
    walk: 'w4',
    least: {
      recall: 0.9,
      recall_must: 0.98,
      precision: 0.86,
      position_accuracy: 0.64,
      unit_accuracy: 0.98,
      hedged_recall: 0.95,
    },
    distractors: 0,
  },
];

describe('hearing on annotated walks', () => {
  for (const { walk, least, distractors } of floors) {
    test(`${walk} stays above its floors`, () => {
      const s = scoreOf(walk);
      for (const [name, floor] of Object.entries(least)) {
        expect(s[name as keyof WalkScore] as number, `${walk} ${name}`).toBeGreaterThanOrEqual(floor);
      }
      expect(s.false_distractor, 'distractors taken for facts').toBeLessThanOrEqual(distractors);
      expect(s.negation_errors, 'denied failures heard as failures').toBe(0);
      expect(s.corrections.wrong_value_extracted, 'values taken back and heard all the same').toBe(0);
      expect(s.praise.taken_as_fact, 'praise heard as a finding').toBe(0);
    });
  }
});

/** Walks on which one denied failure is still heard as a failure; none may be added. */
const deniedLost: ReadonlySet<string> = new Set(['w10', 'w13', 'w20', 'w21', 'w24']);

/** Floors of the other walks, a little under what is reached; w18 to w21 are only scored, never read. Raise them. */
describe('hearing on other walks', () => {
  test.each([
    ['w5', 0.81, 0.84],
    ['w6', 0.77, 0.83],
    ['w7', 0.51, 0.64],
    ['w8', 0.8, 0.83],
    ['w9', 0.79, 0.85],
    ['w10', 0.78, 0.84],
    ['w11', 0.81, 0.82],
    ['w12', 0.85, 0.88],
    ['w13', 0.72, 0.78],
    ['w14', 0.85, 0.89],
    ['w15', 0.77, 0.83],
    ['w16', 0.86, 0.93],
    ['w17', 0.82, 0.9],
    ['w18', 0.58, 0.7],
    ['w19', 0.67, 0.67],
    ['w20', 0.67, 0.69],
    ['w21', 0.4, 0.52],
    ['w22', 0.8, 0.86],
    ['w23', 0.8, 0.8],
    ['w24', 0.62, 0.75],
  ])('%s: recall and precision', (walk, recall, precision) => {
    const s = scoreOf(walk);
    expect(s.recall).toBeGreaterThanOrEqual(recall);
    expect(s.precision).toBeGreaterThanOrEqual(precision);
    expect(s.negation_errors, 'denied failures heard as failures').toBeLessThanOrEqual(
      deniedLost.has(walk) ? 1 : 0,
    );
  });
});

describe('hearing without capitals and stops', () => {
  test.each([
    ['w1', 0.91],
    ['w2', 0.81],
    ['w3', 0.9],
    ['w4', 0.85],
  ])('%s: recall', (walk, recall) => {
    const s = scoreOf(walk, withoutStops);
    expect(s.recall).toBeGreaterThanOrEqual(recall);
    // a part that a wrong stop has put to the clause before may count as one (w2: "two will not lock passenger sidewall")
    expect(s.negation_errors, 'denied failures heard as failures').toBeLessThanOrEqual(1);
  });
});
