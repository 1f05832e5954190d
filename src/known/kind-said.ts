// Why: "it's a diesel pusher" settles what kind of vehicle stands there when nobody wrote it down.
import type { VehicleKind } from '../catalogue/vehicle-kind.ts';
import type { Known, UnitFacts } from './record.ts';

/** Words for a class -> the kind they name. Trade usage (common practice, no source). A bare "class a" needs the fuel beside it. */
const kinds: readonly (readonly [RegExp, VehicleKind])[] = [
  [/\b(diesel pusher|class a diesel|front engine diesel)\b/, 'class-a-diesel'],
  [/\bclass a gas\b/, 'class-a-gas'],
  [/\b(class b|camper van)\b(?! plus)/, 'class-b'],
  [/\b(class c|super c|class b plus)\b/, 'class-c'],
  [/\b(fifth wheel|fifth wheeler)\b/, 'fifth-wheel'],
  [/\b(travel trailer|bumper pull|teardrop)\b/, 'travel-trailer'],
];

const textOf = (known: readonly Known[], part: string, aspect: string): string => {
  const found = known.find((k) => k.part === part && k.aspect === aspect && k.standing === 'known');
  return found?.value.is === 'text' ? found.value.text.toLowerCase() : '';
};

/** The unit with its kind as said, when no paper gives one and what was said is not in conflict. */
export function withKindSaid(unit: UnitFacts, known: readonly Known[]): UnitFacts {
  if (unit.vehicle !== undefined) return unit;
  const said = textOf(known, 'coach', 'class');
  const found = kinds.find(([words]) => words.test(said))?.[1];
  if (found !== undefined) return { ...unit, vehicle: found, kindFrom: 'said' };
  if (!/\bclass a\b/.test(said)) return unit;
  const fuel = textOf(known, 'engine', 'fuel') || textOf(known, 'coach', 'fuel');
  if (fuel === '') return unit;
  return { ...unit, vehicle: fuel === 'diesel' ? 'class-a-diesel' : 'class-a-gas', kindFrom: 'said' };
}
