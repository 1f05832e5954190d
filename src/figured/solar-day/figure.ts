// Why: "four hundred watts of solar" is a label; a day's energy is what runs the refrigerator.
import { panelShare, sunHours } from '../../standards/trade-practice/solar.ts';
import type { FigureCard, Have, Worked } from '../figure.ts';
import { suppose } from '../look-up.ts';
import { numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

function work(have: Have): Worked {
  const [watts, hours, share] = [numberOf(have, 'watts'), numberOf(have, 'sun'), numberOf(have, 'share')];
  return {
    value: watts * hours * share,
    working: [
      `${watts.toFixed(0)} W x ${hours.toFixed(1)} h x ${share.toFixed(2)} = ${(watts * hours * share).toFixed(0)} Wh`,
    ],
  };
}

export const solarDay: FigureCard = {
  id: 'solar-day',
  asks: 'What do the solar panels bring in a day?',
  gives: { part: 'solar_array', aspect: 'energy_in_a_day', unit: 'W.h' },
  needs: [
    { name: 'watts', what: 'watts on the labels', part: 'solar_array', aspect: 'watts', unit: 'W' },
    {
      name: 'sun',
      what: 'hours of full sun',
      part: 'supposed',
      aspect: 'sun_hours',
      unit: 'h',
      find: suppose(sunHours),
    },
    {
      name: 'share',
      what: 'share of the label that arrives',
      part: 'supposed',
      aspect: 'panel_share',
      unit: '1',
      find: suppose(panelShare),
    },
  ],
  formula: 'label watts x hours of full sun x share that arrives',
  cites: [...sunHours.citations, ...panelShare.citations],
  neglects: "Shade: a vent's shadow on one cell can take a third of a panel. Full batteries take nothing.",
  work,
  round: roundDown(10),
  checkedAgainst: 'nobody publishes it for flat panels on a coach; own case beside the card',
};
