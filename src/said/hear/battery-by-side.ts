// Why: among batteries "engine is twelve seven" and "the chassis one" are a battery; "the monitor says sixty percent left" is its monitor.
import type { Word } from './word.ts';

const ofEngine = /^(?:engine|chassis|starter|motor|truck|start|starting|cranking|cab|start-?up)$/;
const ofHouse = /^(?:house|coach|living|camper|trailer|cabin|leisure|domestic)$/;
const standIn = /^(?:ones?|side|bank|set|two|pair)$/;
const measures =
  /^(?:is|'s|are|'re|was|at|reads|reading|shows|showing|sits|sitting|rests|resting|measures|tests|holding|says)$/;
/** Volts of a battery, as the first word of a spoken number. */
const volts = /^(?:nine|ten|eleven|twelve|thirteen|fourteen|(?:9|1[0-4])(?:\.\d+)?)$/;
const stored = /^(?:batter(?:y|ies)|bank|percent|%|amps?|volts?|charge|charged|hours?|ah)$/;

/** The part that the single word at `i` names by the side it is on; undefined where it is an ordinary word. */
export function batteryBySide(
  words: readonly Word[],
  i: number,
  recent: readonly string[],
): string | undefined {
  const norm = (k: number): string => words[k]?.norm ?? '';
  const joined = (k: number): boolean => words[k - 1]?.stop === 0;
  const n = norm(i);
  const near = recent.slice(0, 3);
  const among = near.some((p) => /^(?:house_battery|chassis_battery|battery_cables)$/.test(p));
  if (n === 'monitor') {
    if (norm(i + 1) === 'panel' || norm(i - 1) === 'tank') return undefined;
    const told = words.slice(i + 1, i + 10).some((w) => stored.test(w.norm));
    return told || among ? 'battery_monitor' : undefined;
  }
  const engine = ofEngine.test(n);
  if (!engine && !ofHouse.test(n)) return undefined;
  const one = joined(i + 1) && standIn.test(norm(i + 1));
  if (near[0] === 'battery_disconnect')
    return one ||
      /^(?:is|'s|works|doesn't)$/.test(norm(i + 1)) ||
      (/^(?:for|on|off|to)$/.test(norm(i - 1) === 'the' ? norm(i - 2) : norm(i - 1)) &&
        !/^batter|^bank$/.test(norm(i + 1)))
      ? 'battery_disconnect'
      : undefined;
  if (!among) return undefined;
  let k = i + (one ? 2 : 1);
  while (k < i + 4 && joined(k) && measures.test(norm(k))) k++;
  const read = volts.test(norm(k)) && (words[k - 1]?.stop ?? 2) < 2;
  const counted = /^(?:for|on)$/.test(norm(i - 1)) && /^(?:one|two|three|four|six)$/.test(norm(i - 2));
  if (!one && !read && !counted) return undefined;
  return engine ? 'chassis_battery' : 'house_battery';
}
