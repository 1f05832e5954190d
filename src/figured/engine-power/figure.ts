// Why: sellers say torque and engine speed; buyers ask for horsepower.
import { poundFeetRpmPerHorsepower, powerFromTorque } from '../../standards/physics/power.ts';
import type { FigureCard, Have, Worked } from '../figure.ts';
import { roundNear } from '../round-carefully.ts';

function work(have: Have): Worked {
  const torque = Number(have.torque);
  const speed = Number(have.speed);
  const power = (torque * speed) / poundFeetRpmPerHorsepower;
  return {
    value: power,
    working: [
      `${torque.toFixed(0)} x ${speed.toFixed(0)} / ${poundFeetRpmPerHorsepower.toFixed(3)} = ${power.toFixed(1)}`,
    ],
    note: 'Power at that speed. The greatest power is usually at a higher speed, and less reaches the wheels.',
  };
}

export const enginePower: FigureCard = {
  id: 'engine-power',
  asks: 'How strong is the engine at that speed?',
  gives: { part: 'engine', aspect: 'power', unit: '[HP]' },
  needs: [
    { name: 'torque', what: 'torque', part: 'engine', aspect: 'torque', unit: '[lbf_av].[ft_i]' },
    {
      name: 'speed',
      what: 'engine speed at that torque',
      part: 'engine',
      aspect: 'governed_speed',
      unit: '{rev}/min',
    },
  ],
  formula: 'power = torque x speed / 5,252.113 (pound-feet, rpm, horsepower)',
  cites: [powerFromTorque],
  neglects:
    'Nothing at the flywheel. Between there and the road 13 to 20 percent is lost, and a rated figure holds for a new engine.',
  work,
  round: roundNear(5),
  checkedAgainst: '860 lb.ft at 1,800 rpm is 294.74 hp (test/published/worked-power-sums/power.test.ts)',
};
