// Why: day, dark and full sun are three papers; the choice is remembered, and until one is made the device's own is followed.
export const modes = ['day', 'dark', 'sun'] as const;
export type Mode = (typeof modes)[number];

const key = 'walkwright.mode';

/** The paper chosen on this device; undefined when it follows the device. */
export function chosenMode(): Mode | undefined {
  const kept = localStorage.getItem(key);
  return modes.find((m) => m === kept);
}

/** Puts the page on a paper and remembers it. */
export function chooseMode(mode: Mode): void {
  localStorage.setItem(key, mode);
  document.documentElement.dataset.mode = mode;
}

/** Puts the page on the remembered paper, when there is one. */
export function startMode(): void {
  const mode = chosenMode();
  if (mode) document.documentElement.dataset.mode = mode;
}
