// Why: what a panel gives in a day is far from its label.
import type { Supposed } from '../supposed.ts';
import { practice } from './practice.ts';

export const sunHours: Supposed = {
  id: 'sun-hours',
  what: 'hours of full sun in a day',
  value: 4,
  unit: 'h',
  plusOrMinus: 2,
  citations: [practice('2 in winter to 6 in summer.')],
};
export const panelShare: Supposed = {
  id: 'panel-share',
  what: 'share of the label that arrives',
  value: 0.675,
  unit: '1',
  plusOrMinus: 0.075,
  citations: [
    practice(
      '60 to 75 percent: flat mounting, heat, dust, wiring. In winter flat panels give 40 percent of summer.',
    ),
  ],
};
