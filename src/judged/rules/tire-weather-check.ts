// Why: cracked sidewalls fail under load.
import { practice } from '../../standards/trade-practice/practice.ts';
import { tireBodyCitation } from '../../standards/us-code-of-federal-regulations/49-cfr-393-75.ts';
import { wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const tireWeatherCheck: Rule = {
  id: 'tire-weather-check',
  asks: 'Are the sidewalls cracked or bulged?',
  why: 'A sidewall that cracks open or bulges is a blowout waiting.',
  part: 'tire',
  aspect: 'weather_check',
  look: 'Both sidewalls in raking light, by hand for a bulge; roll for a flat spot.',
  minutes: 3,
  steps: [
    {
      weight: 'danger',
      mustBe: 'none of',
      words: ['separated', 'torn', 'broken', 'fails', 'rotted', 'delaminated', 'damaged'],
      cites: [tireBodyCitation],
    },
    {
      weight: 'defect',
      mustBe: 'none of',
      words: ['cracked', 'leaking', 'soft', 'poor', 'expired'],
      cites: [practice('sidewall cracks that are open are a reason to change the tire')],
    },
    {
      weight: 'wear',
      mustBe: 'none of',
      words: ['worn', 'crazed', 'marginal', 'weak', 'stained', 'scratched', 'faded'],
      cites: [practice('fine lines are watched')],
    },
  ],
  says: {
    meets: 'No cracks or bulges were seen in the sidewall.',
    fails: 'The sidewall is cracked, bulged or weathered.',
    cannotTell: 'What was said does not settle it: look at both sidewalls in good light.',
    notSeen: 'The sidewalls have not been looked at for cracks.',
  },
  next: 'Measure how deep the cracks go; change a tire with open cracks, a bulge or cord in sight.',
  who: 'tire shop',
  caution: 'tires',
  proofs: wordProofs([
    ['good', 'meets', 'sound'],
    ['sound', 'meets', 'sound'],
    ['clean', 'meets', 'sound'],
    ['crazed', 'fails', 'watch'],
    ['worn', 'fails', 'watch'],
    ['cracked', 'fails', 'repair'],
    ['poor', 'fails', 'repair'],
    ['separated', 'fails', 'stop'],
  ]),
};
