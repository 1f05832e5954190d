// Why: at the wheel a clause speaks of what its sentence named before: the parking brake, the brake of the engine, the pressure of the oil.
import type { Talk } from './talk.ts';

const brakes = /^(?:brake|retarder|jake|brakes)$/;

/** True where the sentence so far named the parking brake. */
export function parkedIn(talk: Talk, from: number, to: number): boolean {
  for (let i = from; i < to; i++)
    if (talk.marks.mentionAt.from(i)?.parts.includes('parking_brake')) return true;
  return false;
}

/** True where the sentence so far named the pressure of the oil. */
export function oilIn(talk: Talk, from: number, to: number): boolean {
  for (let i = from; i + 1 < to; i++)
    if (talk.marks.words[i]?.norm === 'oil' && talk.marks.words[i + 1]?.norm === 'pressure') return true;
  return false;
}

/** The brake of engine or exhaust named between two words. */
export function heldBy(talk: Talk, from: number, to: number): string | undefined {
  for (let i = from; i < to; i++) {
    const m = talk.marks.mentionAt.from(i);
    if (!m || !brakes.test(talk.marks.words[m.to - 1]?.norm ?? '')) continue;
    if (/^(?:exhaust|engine|jake|retarder|compression|retard)/.test(talk.marks.words[m.from]?.norm ?? ''))
      return m.parts[0];
  }
  return undefined;
}
