// Why: on a walk people say aloud what is to be done ("we'll get that aligned"); the job that mends it should say who asked, in whose words.
import type { Finding } from '../judged/finding.ts';
import type { Observation } from '../said/entry.ts';
import type { Asked } from './job.ts';

/** House default, no source: seconds before and after a fault within which a job spoken of is meant for it. */
const reach = { before: 10, after: 60 } as const;

/** Observations by which somebody asks for a job. */
export const wishesIn = (standing: Iterable<Observation>): readonly Observation[] =>
  [...standing]
    .filter((o) => o.aspect === 'advice' && o.sense === 'condition')
    .sort((a, b) => (a.id < b.id ? -1 : 1));

/** How far a wish is from a finding, in seconds; undefined where it is of something else. 0 where one of them was not spoken. */
function farFrom(wish: Observation, finding: Finding): number | undefined {
  if (wish.part !== finding.part) return undefined;
  if (wish.place !== undefined && finding.place !== undefined && wish.place !== finding.place)
    return undefined;
  const spoken = (finding.fact?.evidence ?? []).map((o) => o.source).filter((s) => s.from === 'speech');
  const said = wish.source;
  if (said.from !== 'speech' || spoken.length === 0) return 0;
  const gaps = spoken
    .filter((s) => s.media === said.media)
    .map((s) => said.start - s.start)
    .filter((gap) => gap >= -reach.before && gap <= reach.after);
  return gaps.length === 0 ? undefined : Math.min(...gaps.map(Math.abs));
}

/** Each wish goes to one job, that of the nearest finding of its part and place. Groups are jobs by id; wishes of none are left out. */
export function askedFor(
  groups: ReadonlyMap<string, readonly Finding[]>,
  wishes: readonly Observation[],
): ReadonlyMap<string, readonly Asked[]> {
  const out = new Map<string, Asked[]>();
  for (const wish of wishes) {
    let nearest: { readonly job: string; readonly far: number } | undefined;
    for (const [job, of] of groups)
      for (const finding of of) {
        const far = farFrom(wish, finding);
        if (far !== undefined && (nearest === undefined || far < nearest.far)) nearest = { job, far };
      }
    if (nearest === undefined) continue;
    const asked: Asked = { by: wish.saidBy ?? wish.by, words: wordsOf(wish), observation: wish.id };
    const before = out.get(nearest.job);
    if (before) before.push(asked);
    else out.set(nearest.job, [asked]);
  }
  return out;
}

const wordsOf = ({ source, note }: Observation): string =>
  (source.from === 'speech' ? source.words : (source.note ?? note ?? '')).replace(/\s+/g, ' ').trim();
