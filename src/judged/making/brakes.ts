// Why: an air brake's limits are not a hydraulic brake's; what was seen of the fluid or of the air settles which it is.
import type { Facts } from '../../known/facts.ts';

const isSeen = (facts: Facts, part: string): boolean => facts.of(part).some((f) => f.standing !== 'unknown');

/**
 * True unless hydraulic brakes are shown: by brake fluid that was looked at where no air pressure was, or by a kind of vehicle other
 * than a class A diesel. While neither is known the stricter air rule holds. Common practice, no source.
 */
export function mayHaveAirBrakes(facts: Facts): boolean {
  if (isSeen(facts, 'air_gauges') || isSeen(facts, 'air_tanks')) return true;
  if (isSeen(facts, 'brake_fluid')) return false;
  return facts.kind === undefined || facts.kind === 'class-a-diesel';
}
