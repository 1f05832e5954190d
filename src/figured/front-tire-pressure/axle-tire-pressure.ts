// Why: the front and the rear axle ask the same question with other numbers; all tires of an axle get one pressure.
import { isMotorized } from '../../catalogue/vehicle-kind.ts';
import type { Fact, Facts } from '../../known/facts.ts';
import { radialExponent } from '../../standards/references/tire-load.ts';
import { practice } from '../../standards/trade-practice/practice.ts';
import type { FigureCard, Given, Have, Refused, Worked } from '../figure.ts';
import { givenBy, suppose, theOne } from '../look-up.ts';
import { numberOf } from '../number-of.ts';
import { roundUp } from '../round-carefully.ts';

interface Axle {
  readonly id: string;
  readonly name: 'front' | 'rear';
  readonly aspect: string;
  readonly places: readonly string[];
}

/** What is printed on a tire of this axle, or said of the tires in general. */
const onSidewall =
  (axle: Axle, aspect: string) =>
  (facts: Facts): Given | undefined => {
    const found = [...axle.places, undefined]
      .map((place) => facts.get('tire', aspect, place))
      .find((f): f is Fact => f !== undefined);
    return found && givenBy(found);
  };

const fact = (facts: Facts, aspect: string): Fact | undefined => {
  const found = theOne(facts, 'scale_weight', aspect);
  return found === 'several' ? undefined : found;
};

const number = (f: Fact | undefined): number =>
  f?.value.is === 'quantity' && f.standing === 'known' ? f.value.value : Number.NEGATIVE_INFINITY;

/** The heavier wheel position of the front axle where the corners were weighed. */
function heavierCorner(facts: Facts): Given | undefined {
  const [left, right] = [fact(facts, 'left_front'), fact(facts, 'right_front')];
  if (!left || !right) return undefined;
  return givenBy(number(left) >= number(right) ? left : right);
}

function work(have: Have, axle: Axle): Worked | Refused {
  const tires = numberOf(have, 'tires');
  const corner = typeof have.corner === 'number' ? have.corner : undefined;
  const weighed = typeof have.axle === 'number' ? have.axle : undefined;
  const load = corner ?? (weighed === undefined ? undefined : weighed / tires);
  if (load === undefined) return { refused: 'not weighed', lacks: ['axle'] };
  const [rated, most] = [numberOf(have, 'rated_load'), numberOf(have, 'rated_pressure')];
  if (!(tires > 0 && rated > 0)) return { refused: 'nothing to work with' };
  if (load > rated)
    return {
      refused: 'more load than the tire may carry',
      detail: `${load.toFixed(0)} > ${rated.toFixed(0)} lb`,
    };
  const pressure = most * (load / rated) ** (1 / numberOf(have, 'exponent'));
  return {
    value: pressure,
    working: [
      `${load.toFixed(0)} lb on a tire rated ${rated.toFixed(0)} lb at ${most.toFixed(0)} psi`,
      `${most.toFixed(0)} x (${load.toFixed(0)} / ${rated.toFixed(0)})^(1/${numberOf(have, 'exponent').toFixed(2)}) = ${pressure.toFixed(1)} psi cold`,
    ],
    note: `ESTIMATE. Ask for the tire maker's load table: it wins, never go below its lowest row or above what tire and wheel carry. Use the ${axle.name === 'rear' ? 'dual rating where there are duals' : 'heavier side'}, cold, and set all tires of the axle alike; 5 psi more is common practice.${corner === undefined ? ' Halved evenly: weigh each side.' : ''}`,
  };
}

/** The card of one axle. */
export function axleTirePressure(axle: Axle): FigureCard {
  const isRear = axle.name === 'rear';
  return {
    id: axle.id,
    asks: `What pressure do the ${axle.name} tires need for the weight?`,
    gives: { part: 'tire', aspect: axle.aspect, unit: '[psi]' },
    needs: [
      {
        name: 'axle',
        what: `${axle.name} axle on the scale`,
        part: 'scale_weight',
        aspect: axle.name,
        unit: '[lb_av]',
        optional: true,
      },
      {
        name: 'corner',
        what: `heavier ${axle.name} wheel on the scale`,
        part: 'scale_weight',
        aspect: 'left_front',
        unit: '[lb_av]',
        optional: true,
        find: isRear ? () => undefined : heavierCorner,
      },
      {
        name: 'tires',
        what: `tires on the ${axle.name} axle`,
        part: 'supposed',
        aspect: `${axle.name}_tires`,
        unit: '1',
        find: (facts) => ({
          value: { is: 'count', count: isRear && facts.kind !== 'class-b' ? 4 : 2 },
          from: 'default',
          cites: [
            practice(isRear ? 'Four tires on the rear axle, two on a van.' : 'Two tires on the front axle.'),
          ],
        }),
      },
      {
        name: 'rated_load',
        what: 'load on the sidewall',
        part: 'tire',
        aspect: 'rated_load',
        unit: '[lb_av]',
        find: onSidewall(axle, 'rated_load'),
      },
      {
        name: 'rated_pressure',
        what: 'pressure for that load',
        part: 'tire',
        aspect: 'rated_pressure',
        unit: '[psi]',
        find: onSidewall(axle, 'rated_pressure'),
      },
      {
        name: 'exponent',
        what: 'exponent of load over pressure',
        part: 'supposed',
        aspect: 'tire_exponent',
        unit: '1',
        find: suppose(radialExponent),
      },
    ],
    formula: 'pressure = rated pressure x (load / rated load)^(1 / 0.7)',
    cites: [...radialExponent.citations],
    neglects:
      'Tables are stepped: the formula lies within 1 percent of printed rows. One wheel may carry 10 percent more than the other, which is 14 percent of pressure. Bias-ply tires follow another exponent.',
    appliesTo: (facts) => facts.kind === undefined || isMotorized(facts.kind),
    work: (have) => work(have, axle),
    round: roundUp(5),
    checkedAgainst: 'printed load rows and rating points (test/published/tire-load-tables/pressure.test.ts)',
  };
}
