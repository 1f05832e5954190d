// Why: a tow limit is the least of several ratings; this says which, and what share of a trailer sits on the ball.
import { day } from '../../units/day.ts';
import type { Citation, Source } from '../standard.ts';
import type { Supposed } from '../supposed.ts';
import { practice } from './practice.ts';

const club: Source = {
  id: 'towed-weight-and-braking',
  title: 'Towed vehicle weight and braking',
  publisher: "an owners' club",
  edition: 'undated',
  standing: 'trade practice',
  address: 'https://www.fmca.com/motorhome/towing/92-towed-vehicle-weight-and-braking.html',
  scope: "Advice to owners, read as an excerpt. The maker's figure for the chassis has the last word.",
};
export const leastOfTow: Citation = {
  source: club,
  clause: 'text',
  read: day('2026-11-24'),
  says: "The tow limit is the least of the combination rating less the loaded coach, the receiver, ball and tow bar ratings and the chassis maker's own limit.",
};
export const tongueShare: Supposed = {
  id: 'tongue-share',
  what: 'share of a ball trailer on its tongue',
  value: 0.125,
  unit: '1',
  plusOrMinus: 0.025,
  citations: [practice('10 to 15 percent of a ball trailer; next to nothing of a car towed on its wheels.')],
};
