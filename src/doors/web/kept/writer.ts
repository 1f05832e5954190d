// Why: everything written carries a name, so this device remembers whose hands it is in.
const key = 'walkwright.writer';
/** Stands where a name should. */
export const nameless = 'no name given';

/** The name under which things are written from this device. */
export const writer = (): string => localStorage.getItem(key) ?? nameless;

export const hasWriter = (): boolean => localStorage.getItem(key) !== null;

export function setWriter(name: string): void {
  const plain = name.trim().slice(0, 120);
  if (plain === '') localStorage.removeItem(key);
  else localStorage.setItem(key, plain);
}
