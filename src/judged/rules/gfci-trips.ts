// Why: an outlet that does not trip shocks.
import { groundFault } from '../../standards/trade-practice/ground-fault.ts';
import { wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const gfciTrips: Rule = {
  id: 'gfci-trips',
  asks: 'Do the protected outlets trip when tested?',
  why: 'One that does not trip kills.',
  part: 'outlets_gfci',
  aspect: 'gfci_trips',
  also: ['operates'],
  look: 'Its own button, then a tester at each outlet behind it.',
  minutes: 8,
  steps: [
    {
      weight: 'danger',
      mustBe: 'none of',
      words: ['no', 'fails', 'broken', 'missing', 'stuck', 'burnt', 'absent', 'weak', 'intermittent', 'slow'],
      cites: [groundFault('a ground-fault outlet trips at 4 to 6 mA; its own button proves it')],
    },
    {
      weight: 'danger',
      mustBe: 'one of',
      words: ['yes', 'works', 'passes', 'tripped', 'good', 'holds', 'sound'],
      cites: [groundFault('a ground-fault outlet trips at 4 to 6 mA; its own button proves it')],
    },
  ],
  says: {
    meets: 'The protected outlets tripped.',
    fails: 'A protected outlet does not trip.',
    cannotTell: 'What was said does not settle it: test each.',
    notSeen: 'Nobody has tested the protected outlets.',
  },
  next: 'Change it; find what else is behind it.',
  who: 'qualified electrician or certified RV technician',
  caution: 'shore-power',
  proofs: wordProofs([
    ['yes', 'meets', 'sound'],
    ['works', 'meets', 'sound'],
    ['passes', 'meets', 'sound'],
    ['no', 'fails', 'stop'],
    ['fails', 'fails', 'stop'],
  ]),
};
