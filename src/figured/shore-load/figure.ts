// Why: "thirty amp" is a number of watts, and for an evening it is fewer.
import {
  continuousShare,
  siteRatings,
  siteVolts,
} from '../../standards/national-fire-protection-association/nfpa-70-article-551.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { suppose } from '../look-up.ts';
import { numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

/** A cord is of a standard rating or of none: "about fifty" is fifty. */
const near = 0.1;

function work(have: Have): Worked | Refused {
  const said = numberOf(have, 'amps');
  const rating = siteRatings.find((r) => Math.abs(said / r.amperes - 1) <= near);
  if (!rating) return { refused: 'no standard rating', detail: said.toFixed(0) };
  const { amperes, legs } = rating;
  const most = amperes * numberOf(have, 'volts') * legs;
  const steady = most * numberOf(have, 'share');
  return {
    value: steady,
    working: [
      `${amperes.toFixed(0)} A x ${numberOf(have, 'volts').toFixed(0)} V x ${legs} ${legs === 1 ? 'leg' : 'legs'} = ${most.toFixed(0)} VA`,
      `for three hours or more: ${steady.toFixed(0)} VA`,
    ],
    note: `One roof air conditioner takes 13 to 16 A${legs === 2 ? '; each leg carries half' : ''}. An adapter does not make a cord or a site stronger.`,
  };
}

export const shoreLoad: FigureCard = {
  id: 'shore-load',
  asks: 'What can run on shore power?',
  gives: { part: 'shore_cord', aspect: 'continuous_power', unit: 'V.A' },
  needs: [
    { name: 'amps', what: 'rating of the shore cord', part: 'shore_cord', aspect: 'amps', unit: 'A' },
    {
      name: 'volts',
      what: 'voltage of one leg',
      part: 'supposed',
      aspect: 'site_volts',
      unit: 'V',
      find: suppose(siteVolts),
    },
    {
      name: 'share',
      what: 'share for long loads',
      part: 'supposed',
      aspect: 'continuous_share',
      unit: '1',
      find: suppose(continuousShare),
    },
  ],
  formula: 'amperes x 120 V x legs (50 A has two) x 80 % for loads of three hours or more',
  cites: [...siteVolts.citations, ...continuousShare.citations],
  neglects:
    'A weak site: at 108 V a tenth is gone. How the load falls on the two legs; one can be full while the other is idle.',
  work,
  round: roundDown(10),
  checkedAgainst:
    'published site ratings: 2,400, 3,600 and 12,000 VA (test/published/battery-maker/charge.test.ts)',
};
