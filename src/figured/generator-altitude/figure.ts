// Why: a generator that ran both air conditioners at the coast may not at the campground.
import {
  type AltitudeRule,
  altitudeRules,
  campAltitude,
  campTemperature,
  heatRule,
} from '../../standards/trade-practice/generator-derate.ts';
import type { FigureCard, Have, Worked } from '../figure.ts';
import { suppose } from '../look-up.ts';
import { numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

/** Share of the rating left at an altitude in feet, by one maker's rule. */
export const shareAt = (feet: number, rule: AltitudeRule): number =>
  Math.max(0, 1 - (rule.percent / 100) * (Math.max(0, feet - rule.above) / rule.every));

/** Share left at a temperature in degrees Fahrenheit. */
export const shareInHeat = (degrees: number): number =>
  Math.max(0, 1 - (heatRule.percent / 100) * (Math.max(0, degrees - heatRule.above) / heatRule.every));

function work(have: Have): Worked {
  const rated = numberOf(have, 'rated');
  const [altitude, temperature] = [numberOf(have, 'altitude'), numberOf(have, 'temperature')];
  const shares = altitudeRules.rows.map((rule) => shareAt(altitude, rule));
  const used = shares[0]!;
  const heat = shareInHeat(temperature);
  const left = rated * used * heat;
  const least = Math.min(...shares);
  const most = Math.max(...shares);
  return {
    value: left,
    ownDoubt: (rated * heat * (most - least)) / 2,
    working: [
      `${rated.toFixed(2)} kW x ${used.toFixed(3)} for ${altitude.toFixed(0)} ft x ${heat.toFixed(3)} for ${temperature.toFixed(0)} F = ${left.toFixed(2)} kW`,
    ],
    note: `Makers' rules for this altitude leave ${(least * 100).toFixed(0)} to ${(most * 100).toFixed(0)} percent. The set's manual decides; turbocharged diesels lose less, and on propane about 10 percent is lost at any altitude.`,
  };
}

export const generatorAltitude: FigureCard = {
  id: 'generator-altitude',
  asks: 'What will the generator still give in the mountains?',
  gives: { part: 'generator', aspect: 'power_at_altitude', unit: 'kW' },
  needs: [
    { name: 'rated', what: 'rated power', part: 'generator', aspect: 'rated_kw', unit: 'kW' },
    {
      name: 'altitude',
      what: 'altitude',
      part: 'supposed',
      aspect: 'altitude',
      unit: '[ft_i]',
      find: suppose(campAltitude),
    },
    {
      name: 'temperature',
      what: 'outside temperature',
      part: 'supposed',
      aspect: 'outside_temperature',
      unit: '[degF]',
      find: suppose(campTemperature),
    },
  ],
  formula: 'rated x (1 - 3.5 % for each 1,000 ft above 1,000) x (1 - 2 % for each 10 F above 85 F)',
  cites: [altitudeRules.citation, heatRule.citation],
  neglects:
    "Wear, and what starting a motor takes: two to three times its running power for a second. Makers' rules differ by up to 15 percent of the rating; half of that spread is carried as plus-or-minus.",
  work,
  round: roundDown(0.1),
  checkedAgainst: "makers' own worked rows for each rule (test/published/generator-makers/derate.test.ts)",
};
