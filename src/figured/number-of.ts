// Why: `work` is handed numbers under names; a missing one must stop it loudly or be seen as missing, never become zero.
import type { Have } from './figure.ts';

/** A number that must be there. Throws where a card forgot to make the need required. */
export function numberOf(have: Have, name: string): number {
  const value = have[name];
  if (typeof value !== 'number') throw new TypeError(`figure: "${name}" is not a number`);
  return value;
}

/** A number that may be missing. */
export const mayHaveNumber = (have: Have, name: string): number | undefined => {
  const value = have[name];
  return typeof value === 'number' ? value : undefined;
};
