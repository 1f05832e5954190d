// Why: a generator's volts and hertz at no load are no answer to how it does under load; taken for one, they would pass it.
import type { Draft } from './clause.ts';
import type { Word } from './word.ts';

const apart: Readonly<Partial<Record<string, string>>> = {
  volts_loaded: 'volts_unloaded',
  hertz_loaded: 'hertz_unloaded',
};
/** How far back, in words, somebody has said what it is loaded with. */
const reach = 14;

/** True when the last word on the load before a number is that there is none. */
function isUnloaded(words: readonly Word[], at: number): boolean {
  for (let i = at; i >= Math.max(0, at - reach); i--) {
    const norm = words[i]?.norm;
    if (norm === 'unloaded' || norm === 'idling') return true;
    if (norm === 'load') return words[i - 1]?.norm === 'no' || words[i - 1]?.norm === 'without';
    if (norm === 'with' && !/^(?:no|nothing|none|everything)$/.test(words[i + 1]?.norm ?? '')) return false;
    if (norm === 'loaded' || norm === 'airs' || norm === 'both') return false;
  }
  return false;
}

/** Readings of a generator said at no load, put under aspects of their own. */
export const setLoadsApart = (drafts: readonly Draft[], words: readonly Word[]): Draft[] =>
  drafts.map((d) => {
    const other = d.part === 'generator' ? apart[d.aspect] : undefined;
    return other !== undefined && isUnloaded(words, d.at) ? { ...d, aspect: other } : d;
  });
