// Why: a figure that no question covers must still be on the sheet, and each must be there once.
import { expect, test } from 'vitest';
import type { Figure } from '../../../figured/figure.ts';
import { figureCards } from '../../../figured/index.ts';
import { byQuestion } from './questions.ts';

const figure = (id: string, is: 'worked' | 'gap'): Figure => ({ id, result: { is } }) as Figure;

test('every figure there is, and one never heard of, is asked about once', () => {
  const all = [...figureCards.map((c) => figure(c.id, 'worked')), figure('never-heard-of', 'gap')];
  const shown = byQuestion(all).flatMap((q) => q.figures.map((f) => f.id));
  expect(shown.toSorted()).toEqual(all.map((f) => f.id).toSorted());
});
test('answers come before gaps, and shore power is about staying, not about weight', () => {
  const [first] = byQuestion([figure('water-days', 'gap'), figure('shore-load', 'worked')]);
  expect(first).toMatchObject({
    asks: 'How long can one stay in it?',
    figures: [{ id: 'shore-load' }, { id: 'water-days' }],
  });
});
