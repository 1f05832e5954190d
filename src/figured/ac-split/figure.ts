// Why: "blows cold" becomes the difference between the air that goes in and the air that comes out.
import { subtraction } from '../../standards/physics/plain.ts';
import { practice } from '../../standards/trade-practice/practice.ts';
import type { FigureCard, Have, Worked } from '../figure.ts';
import { numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

function work(have: Have): Worked {
  const [back, out] = [numberOf(have, 'return'), numberOf(have, 'supply')];
  const split = back - out;
  return {
    value: split,
    working: [`${back.toFixed(1)} F - ${out.toFixed(1)} F = ${split.toFixed(1)} F`],
    note:
      split <= 0
        ? 'The air comes out no colder than it went in: not cooling, or the two readings are swapped.'
        : 'After half an hour on high. Damp air makes it smaller; it does not say how much air moves.',
  };
}

export const acSplit: FigureCard = {
  id: 'ac-split',
  asks: 'Does the air conditioner cool?',
  each: 'ac_run',
  gives: { part: 'ac_run', aspect: 'drop_F', unit: '[degF]{difference}' },
  needs: [
    { name: 'return', what: 'air going in', part: 'ac_run', aspect: 'return_F', unit: '[degF]' },
    { name: 'supply', what: 'air coming out', part: 'ac_run', aspect: 'supply_F', unit: '[degF]' },
  ],
  formula: 'drop = return air - supply air',
  cites: [subtraction, practice('18 to 22 F after 20 to 30 minutes on high cool, less in damp air.')],
  neglects: 'Humidity, which can halve the drop of a sound unit, and the amount of air.',
  work,
  round: roundDown(1),
  checkedAgainst: 'nobody publishes it: it is a subtraction; own cases beside the card',
};
