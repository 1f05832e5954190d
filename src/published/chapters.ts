// Why: a recording is opened at the second that matters; chapters are the stations of the walk, named with what was found there.
import { partOf, stationOf, stations } from '../catalogue/index.ts';
import type { Finding } from '../judged/finding.ts';
import type { Cue, Observation } from '../said/entry.ts';
import type { Chapter, Unpublished } from './document.ts';
import { byWorst, isFault } from './fault.ts';
import { groupTitle, groupWords, isSight, type Together, together } from './fault-groups.ts';
import { badStateWords } from './plain-state.ts';
import { lowered, subjectWords } from './plain-subject.ts';
import { type Heard, stationRuns } from './station-runs.ts';

/** Parts that a walker speaks of anywhere: hearing them says little of where he stands. */
const anywhere = new Set(['coach', 'engine', 'fresh_tank', 'gray_tank', 'black_tank', 'plumbing']);

const spoken = (o: Observation): (Heard & { readonly media: string; readonly id: string }) | undefined => {
  const station = partOf(o.part)?.station;
  if (o.source.from !== 'speech' || station === undefined) return undefined;
  return {
    station,
    at: o.source.start,
    weight: anywhere.has(o.part) ? 0.2 : 1,
    media: o.source.media,
    id: o.id,
  };
};

/** Words in a cue that name a station ("up on the roof now"); at its beginning they say more than further on. */
function announcements(cues: readonly Cue[]): readonly Heard[] {
  return cues.flatMap((c) =>
    stations.flatMap((s) =>
      s.say.flatMap((w) => {
        const at = ` ${c.text.toLowerCase().replace(/[^a-z' ]/g, ' ')} `
          .replace(/\s+/g, ' ')
          .indexOf(` ${w} `);
        if (at < 0) return [];
        const share = c.text.length === 0 ? 0 : at / c.text.length;
        return [
          {
            station: s.id,
            at: c.start + (c.end - c.start) * Math.min(1, share),
            weight: at < 24 ? 1.8 : 0.5,
          },
        ];
      }),
    ),
  );
}

/** House default, no source: longer words are cut to their first clause, so that a title fits a player's list. */
const longest = 48;

/** "tires, 5 places, 7.5 years old", "roof ladder loose", "wipers not settled". */
function foundWords(group: Together): string {
  const [first] = group;
  const title = groupTitle(group);
  const subject = group.length > 1 && title.includes(',') ? lowered(title) : subjectWords(first);
  if (first.outcome === 'cannot tell') return `${subject} not settled`;
  const { fact } = first;
  // What a rule says of a sight is a sentence; a title wants the one word that was said.
  const isWord = !isSight(first) && first.limit === undefined && fact?.value.is === 'state';
  const words = isWord
    ? badStateWords(first.part, first.aspect, fact.value.state)
    : (groupWords(group).split(/, against|; /)[0] ?? '');
  const fits = words.length <= longest && (isWord || isSight(first) || first.limit !== undefined);
  return `${subject}: ${fits ? words : first.verdict}`;
}

function titleOf(station: string, found: readonly Finding[]): string {
  const name = stationOf(station)?.name ?? station;
  const groups = together(found);
  const [first, second] = groups;
  if (first === undefined) return name;
  const named = [first, ...(second === undefined ? [] : [second])].map(foundWords);
  const more = groups.length - named.length;
  return `${name} – ${named.join('; ')}${more > 0 ? `; ${more} more` : ''}`;
}

function ofOne(media: string, cues: readonly Cue[], u: Unpublished): readonly Chapter[] {
  const spokenHere = [...u.record.standing.values()]
    .map(spoken)
    .filter((h) => h?.media === media)
    .filter((h) => h !== undefined);
  const heard: readonly Heard[] = [...spokenHere, ...announcements(cues)].toSorted(
    (a, b) => a.at - b.at || a.weight - b.weight || (a.station < b.station ? -1 : 1),
  );
  if (heard.length === 0) return [];
  const runs = stationRuns(heard);
  const end = cues.reduce((latest, c) => Math.max(latest, c.end), heard.at(-1)?.at ?? 0);
  const starts = runs.map((r, k) => (k === 0 ? 0 : r.first));
  const faults = u.findings.filter(isFault).toSorted(byWorst);
  return runs.map((r, i) => {
    const from = starts[i] ?? r.first;
    const to = starts[i + 1] ?? Math.max(end, r.last + 1);
    const here = faults.filter((f) =>
      f.fact?.evidence.some(
        (o) =>
          o.source.from === 'speech' &&
          o.source.media === media &&
          o.source.start >= from &&
          o.source.start < to,
      ),
    );
    return { start: from, end: to, station: r.station, title: titleOf(r.station, here), media };
  });
}

/** Chapters of every recording with a transcript, in the order in which the transcripts were kept. They follow one another without a gap. */
export function chapters(u: Unpublished): readonly Chapter[] {
  const seen = new Map<string, readonly Cue[]>();
  for (const t of u.record.transcripts) seen.set(t.media, [...(seen.get(t.media) ?? []), ...t.cues]);
  for (const o of u.record.standing.values())
    if (o.source.from === 'speech' && !seen.has(o.source.media)) seen.set(o.source.media, []);
  return [...seen].flatMap(([media, cues]) => ofOne(media, cues, u));
}
