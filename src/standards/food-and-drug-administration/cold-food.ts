// Why: how cold a refrigerator keeps food that is safe to eat.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Source } from '../standard.ts';

const readOn = day('2026-11-24');

export const fdaColdFood: Source = {
  id: 'fda-cold-food',
  title: 'Pages on storing food: refrigerator and freezer temperatures',
  publisher: 'US Food and Drug Administration',
  edition: 'web pages, undated',
  standing: 'standard',
  address: 'https://www.fda.gov/food',
  scope:
    'Advice to households, not a test of an appliance. Put the thermometer in water and read it after 5 to 8 hours.',
};

export const coldBox = limitOf('cold-box', 'temperature of the fresh food box', '[degF]', readOn, 40, {
  source: fdaColdFood,
  clause: 'refrigerator',
  says: 'keep the refrigerator at or below 40 °F',
  read: readOn,
});

export const coldFreezer = limitOf('cold-freezer', 'temperature of the freezer', '[degF]', readOn, 0, {
  source: fdaColdFood,
  clause: 'freezer',
  says: 'keep the freezer at 0 °F',
  read: readOn,
});
