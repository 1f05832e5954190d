// Why: a gas leak is the fire that ends everything. The same test, where it was said of the detector valve.
import { lpPressureHeld } from '../../standards/national-fire-protection-association/lp-tests.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const lpDropHeldValve: Rule = {
  id: 'lp-drop-held-valve',
  asks: 'Did the gas system hold its pressure in the timed drop test?',
  why: 'A gas leak is the fire that ends it.',
  part: 'lp_detector_valve',
  aspect: 'drop_test',
  appliesTo: (facts, place) => facts.get('lp_detector_valve', 'drop_test', place) !== undefined,
  expectedAt: () => [],
  look: 'A licensed person: pressurize, shut, watch the gauge three minutes.',
  minutes: 20,
  steps: [{ weight: 'danger', must: 'at least', limit: lpPressureHeld }],
  says: {
    meets: 'The system held its pressure in the timed test.',
    fails: 'The system did not hold its pressure in the timed test.',
    cannotTell: 'The pressure held is too near the limit, or is not a pressure: test again.',
    notSeen: 'No timed drop test has been done.',
  },
  next: 'Close the tank; find and mend the leak; test again before gas is used.',
  who: 'licensed LP gas technician',
  caution: 'lp-gas',
  proofs: numberProofs("[in_i'H2O]", [
    [3, 'fails', 'stop'],
    [7.5, 'fails', 'stop'],
    [8, 'meets', 'sound'],
    [11, 'meets', 'sound'],
    [8, 'cannot tell', 'stop', 0.2],
  ]),
};
