// Why: a second of a recording is found by the clock of a player, minutes and seconds.

/** Seconds -> "12:21", from an hour on "1:02:03". Cut down, never rounded up: the player must not start past the word. */
export function minutes(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds + 1e-9));
  const two = (n: number): string => String(n).padStart(2, '0');
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
}
