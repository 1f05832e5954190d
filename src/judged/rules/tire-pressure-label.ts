// Why: a tire under its label's pressure runs hot and bursts.
import { labelPressure } from '../making/label-pressure.ts';
import { numberProofs } from '../making/proofs.ts';
import { tirePlaces } from '../making/tire-places.ts';
import type { Rule } from '../rule.ts';

export const tirePressureLabel: Rule = {
  id: 'tire-pressure-label',
  asks: 'Do the tires have the pressure of the label?',
  why: 'A tire low on air runs hot and bursts.',
  part: 'tire',
  aspect: 'pressure_cold',
  expectedAt: tirePlaces,
  look: 'Cold, in the shade, before it has rolled a mile.',
  minutes: 6,
  steps: [{ weight: 'defect', must: 'at least', limit: labelPressure }],
  says: {
    meets: 'It had the pressure of the label, cold.',
    fails: 'It has less than the pressure of the label.',
    cannotTell: 'The pressure of the label is not known, or the reading is too near it: read both again.',
    notSeen: 'The cold pressure has not been read.',
  },
  next: 'Fill it cold; under four fifths of the label treat it as run flat: a tire shop looks inside first.',
  who: 'tire shop',
  caution: 'tires',
  proofs: numberProofs(
    '[psi]',
    [
      [95, 'fails', 'repair'],
      [100, 'meets', 'sound'],
      [110, 'meets', 'sound'],
      [100, 'cannot tell', 'watch', 3],
    ],
    [{ part: 'cert_label', aspect: 'cold_pressure', value: { is: 'quantity', value: 100, unit: '[psi]' } }],
  ),
};
