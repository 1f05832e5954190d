// Why: sellers quote the receiver; the limit is the least of several, and the buyer must hear which one.
import { isMotorized } from '../../catalogue/vehicle-kind.ts';
import { leastOfTow, tongueShare } from '../../standards/trade-practice/tow-limit.ts';
import type { FigureCard, Have, Worked } from '../figure.ts';
import { firstOf, suppose } from '../look-up.ts';
import { mayHaveNumber, numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

const byTongue = "tongue rating over the tongue's share";

function work(have: Have): Worked {
  const room = numberOf(have, 'gcwr') - numberOf(have, 'weight');
  const limits: [string, number][] = [
    ['combination rating less the loaded coach', room],
    ['receiver', numberOf(have, 'receiver')],
  ];
  const unread: string[] = [];
  for (const [name, what] of [
    ['chassis', "chassis maker's limit"],
    ['ball', 'ball'],
    ['bar', 'tow bar'],
  ] as const) {
    const lb = mayHaveNumber(have, name);
    if (lb === undefined) unread.push(what);
    else limits.push([what, lb]);
  }
  const tongue = mayHaveNumber(have, 'tongue');
  if (tongue === undefined) unread.push('tongue rating');
  else limits.push([byTongue, tongue / numberOf(have, 'tongue_share')]);
  const leastOf = (some: readonly (readonly [string, number])[]) =>
    some.reduce((a, b) => (b[1] < a[1] ? b : a));
  const [binds, least] = leastOf(limits);
  const [other, flat] = leastOf(limits.filter(([what]) => what !== byTongue));
  const onWheels =
    binds === byTongue
      ? `That is for a trailer on a ball; for a car on its own wheels the least is ${flat.toFixed(0)} lb (${other}). `
      : '';
  const over =
    least < 0 ? ' The loaded coach alone is over its combination rating: nothing may be towed.' : '';
  return {
    value: Math.max(0, least),
    working: limits.map(([what, lb]) => `${what}: ${lb.toFixed(0)} lb`),
    binds,
    note: `${onWheels}${unread.length > 0 ? `Not read: ${unread.join(', ')}; the true limit may be lower. ` : ''}Confirm with the maker's figure. What may be pulled is not what may be stopped: ask what brakes your state wants on the towed vehicle.${over}`,
  };
}

export const towLimit: FigureCard = {
  id: 'tow-limit',
  asks: 'How much can I tow?',
  gives: { part: 'coach', aspect: 'tow_limit', unit: '[lb_av]' },
  needs: [
    {
      name: 'gcwr',
      what: 'gross combination weight rating',
      part: 'chassis_label',
      aspect: 'gcwr',
      unit: '[lb_av]',
      find: firstOf(['chassis_label', 'gcwr'], ['coach', 'gcwr']),
    },
    {
      name: 'weight',
      what: 'weight of the loaded coach, or else its weight rating',
      part: 'scale_weight',
      aspect: 'total',
      unit: '[lb_av]',
      find: firstOf(['scale_weight', 'total'], ['cert_label', 'gvwr'], ['coach', 'gvwr']),
    },
    {
      name: 'receiver',
      what: 'rating of the receiver',
      part: 'hitch_receiver',
      aspect: 'rated_tow',
      unit: '[lb_av]',
    },
    {
      name: 'chassis',
      what: 'tow limit of the chassis maker',
      part: 'chassis_label',
      aspect: 'tow_limit',
      unit: '[lb_av]',
      optional: true,
    },
    {
      name: 'ball',
      what: 'rating of the ball',
      part: 'hitch_receiver',
      aspect: 'rated_ball',
      unit: '[lb_av]',
      optional: true,
    },
    {
      name: 'bar',
      what: 'rating of the tow bar',
      part: 'tow_bar',
      aspect: 'rated',
      unit: '[lb_av]',
      optional: true,
    },
    {
      name: 'tongue',
      what: 'tongue rating of the receiver',
      part: 'hitch_receiver',
      aspect: 'rated_tongue',
      unit: '[lb_av]',
      optional: true,
    },
    {
      name: 'tongue_share',
      what: 'share of a trailer on its tongue',
      part: 'supposed',
      aspect: 'tongue_share',
      unit: '1',
      find: suppose(tongueShare),
    },
  ],
  formula:
    "the least of: GCWR - loaded coach; receiver; chassis maker's limit; ball; tow bar; tongue rating / tongue share",
  cites: [leastOfTow, ...tongueShare.citations],
  neglects:
    'Room on the rear axle for the tongue, the base plate of a towed car, the ball mount, and brakes. Any of them can be the least; a scale and the maker tell.',
  appliesTo: (facts) => facts.kind === undefined || isMotorized(facts.kind),
  work,
  round: roundDown(10),
  checkedAgainst:
    'nobody publishes a worked coach without naming its maker; our own worked case, and each limit by hand',
};
