// Why: what a unit does not have is neither missing nor unseen; coverage, rules and figures must all know it the same way.
import { aspectOf, partOf } from '../catalogue/index.ts';
import { goesWith } from './goes-with.ts';
import type { Known, UnitFacts } from './record.ts';
import { yesOrNo } from './yes-or-no.ts';

type Spoken = Pick<Known, 'part' | 'place' | 'aspect' | 'standing' | 'value'>;

/**
 * Whether a unit is known to have none of a part: its equipment is switched off, it is not a part of this kind of vehicle,
 * it was said to be absent (of no particular place, or of the only place it could be), it was counted as none, or the part
 * it goes with is any of these.
 * @param of everything known of one part
 */
export function hasNone(part: string, unit: UnitFacts, of: (part: string) => readonly Spoken[]): boolean {
  const own = partOf(part);
  if (own === undefined) return true;
  const told = unit.equipment[part];
  if (told === false) return true;
  const seen = of(part);
  if (told !== true) {
    if (unit.vehicle !== undefined && !own.kinds.includes(unit.vehicle)) return true;
    if (isAbsent(seen, own.places.length)) return true;
  }
  const other = goesWith[part];
  return other !== undefined && hasNone(other, unit, of);
}

function isAbsent(seen: readonly Spoken[], places: number): boolean {
  const known = seen.filter((k) => k.standing === 'known');
  if (
    known.some(
      (k) => k.aspect === 'count' && k.place === undefined && k.value.is === 'count' && k.value.count === 0,
    )
  )
    return true;
  const present = known.filter((k) => k.aspect === 'present');
  const says = (k: Spoken) => yesOrNo(k.value, aspectOf(k.part, 'present'));
  return (
    present.length > 0 &&
    present.every((k) => says(k) === 'no') &&
    (places <= 1 || present.some((k) => k.place === undefined))
  );
}
