// Why: the pressure a tire should have stands on the coach's own label, and only there.
import type { Facts } from '../../known/facts.ts';
import type { PlateLimit } from '../rule.ts';

/** The cold pressure of the certification label, when it has been read. */
export function labelPressure(facts: Facts): PlateLimit | undefined {
  const plate = facts.all('cert_label', 'cold_pressure')[0];
  return plate && { plate, says: 'cold pressure on the certification label' };
}
