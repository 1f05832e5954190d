// Why: how many owned it, where it stood, who smoked or kept a dog in it and what it came through is told in people's words, not in parts.
// Trade usage (common practice, no source).
import type { Clause, Draft } from './clause.ts';
import { denialBefore, draftOf, type Verdict } from './state-draft.ts';
import type { Talk } from './talk.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const counts: Readonly<Record<string, number>> = Object.assign(Object.create(null), {
  one: 1,
  single: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  '1': 1,
  '2': 2,
  '3': 3,
  '4': 4,
});
const ranks = /^(?:first|original|second|third|fourth|fifth|sixth|2nd|3rd|4th|1st)$/;
const says =
  /^(?:says?|said|told|tells|claims?|swears?|thinks|thought|had|has|put|kept|did|left|replaced|got|took|stored|never|always|bought|used|mentioned|reckons|installed|added|was|wanted|smoked)$/;
const nobody = set(
  "nobody no never non not didn't don't hasn't haven't ain't wasn't without none neither nor zero",
);
const animals = set(
  'dog dogs cat cats pet pets animal animals puppy puppies pup pups kitty kitties critters hound hounds',
);
const keeps =
  /^(?:had|have|has|kept|keep|keeps|owned|own|owns|carried|traveled|travelled|travel|camped|brought|with|lived|slept|rode|took)$/;
const inHere = /^(?:in|inside|along|aboard|with)$/;
const idle = set('sat sits sitting stayed parked stored kept lived been spent slept wintered');
const lots = set(
  'tree trees field yard driveway pasture barn lot weeds weather sun rain snow desert storage backyard lake campground campsite orchard shed garage carport shelter awning roof outside outdoors outdoor inside indoors indoor unused still street beach coast cover farm hangar warehouse building lean-to barns sheds trailer',
);
const uses = /^(?:used|use|uses|took|take|drove|camped|lived|live|fulltimed|snowbirded|traveled|travelled)$/;
const useSpans = set(
  'weekend weekends summer summers winter winters times twice once week weeks month months season seasons time timed timing trip trips year years',
);
const hits =
  /^(?:accident|accidents|wreck|wrecks|wrecked|crash|crashes|crashed|collision|collisions|flood|flooded|floods|hail|hailstorm|hailed|rollover|totaled|totalled|sideswiped|submerged|jackknifed|rearended|tboned)$/;
const looks = /^(?:damage|dents?|dings?|dimples|pits?|marks?|on)$/;

/** Owners, keeping, smokers, animals and accidents in a clause. */
export function hearOwner(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const norm = (k: number): string => (k < clause.from || k >= clause.to ? '' : (words[k]?.norm ?? ''));
  const any = (from: number, to: number, of: ReadonlySet<string>): number => {
    for (let k = Math.max(from, clause.from); k < Math.min(to, clause.to); k++) if (of.has(norm(k))) return k;
    return -1;
  };
  const put = (part: string, at: number, length: number, how: 'no' | 'noted' | 'bad'): void => {
    const v: Verdict =
      how === 'no'
        ? { part, aspect: 'present', state: 'no', sense: 'absent', polarity: 'good', weight: 0.75 }
        : how === 'bad'
          ? { part, aspect: 'condition', state: 'damaged', sense: 'defect', polarity: 'bad', weight: 0.75 }
          : {
              part,
              aspect: 'condition',
              state: 'noted',
              sense: 'condition',
              polarity: 'neutral',
              weight: 0.7,
            };
    out.push(draftOf(talk, clause, taken, v, at, length));
  };
  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i] || talk.scopes.elsewhere[i] === 1) continue;
    const n = norm(i);
    if (/^owners?$/.test(n)) {
      const gap = /^(?:previous|prior|private|local|careful|previous)$/.test(norm(i - 1)) ? 2 : 1;
      const lead = norm(i - gap);
      const count = counts[lead];
      const ranked = ranks.test(lead);
      if ((count === undefined && !ranked) || (ranked && says.test(norm(i + 1)))) continue;
      const from = i - gap;
      out.push({
        part: 'title_doc',
        aspect: 'owners_named',
        value:
          count === undefined
            ? {
                is: 'text',
                text: words
                  .slice(from, i + 1)
                  .map((w) => w.norm)
                  .join(' '),
              }
            : { is: 'count', count },
        sense: count === undefined ? 'identity' : 'quantity',
        polarity: 'neutral',
        ...talk.doubtAt(i),
        from: Math.max(clause.from, from - 3),
        to: Math.min(clause.to, i + 3),
        at: from,
        weight: 0.8,
      });
      taken.fill(1, from, i + 1);
      continue;
    }
    const denied = any(i - 5, i, nobody) >= 0;
    if (
      (/^smok(?:ed|ing|es)$/.test(n) && /^(?:in|inside|around|here)$/.test(norm(i + 1))) ||
      /^(?:smokers?|nonsmokers?|smoked)$/.test(n) ||
      (n === 'up' &&
        /^(?:lit|light|lights|puffed)$/.test(norm(i - 1)) &&
        inHere.test(norm(i + 1)) &&
        denied &&
        any(i - 6, i, set('nobody one never anybody anyone ever')) >= 0) ||
      (n === 'smoke' &&
        ((denied && inHere.test(norm(i + 1)) && any(i - 5, i, set('nobody never who ones')) >= 0) ||
          norm(i + 1) === 'free'))
    ) {
      if (n === 'smoked' && !denied && !inHere.test(norm(i + 1))) continue;
      const free = n.startsWith('non') || norm(i + 1) === 'free';
      put('pet_smoke_odor', i, 1, denied || free ? 'no' : 'bad');
      continue;
    }
    if (animals.has(n) && !/^(?:smells?|smelled|smelling|hair|like|of|hair)$/.test(norm(i - 1))) {
      const next = norm(i + 1);
      if (/^(?:house|hair|smell|smells|odor|odors|stain|stains|door|bed|bowl|food|eared|leg|box)$/.test(next))
        continue;
      const verb = (() => {
        for (let k = i - 1; k >= Math.max(clause.from, i - 6); k--) if (keeps.test(norm(k))) return k;
        return -1;
      })();
      if (denied || next === 'free') {
        if (
          /^(?:pet|dog|cat)$/.test(n)
            ? next === 'free' || verb >= 0 || any(i - 5, i, set('nobody never')) >= 0
            : true
        )
          put('pet_smoke_odor', i, 1, 'no');
      } else if (
        (verb >= 0 && (norm(verb - 1) !== 'i' || inHere.test(next))) ||
        /^(?:lived|slept|rode|traveled|travelled|stayed|in)$/.test(next)
      )
        put('storage_history', i, 1, 'noted');
      continue;
    }
    if (n === 'ended' && norm(i - 1) === 'rear' && any(i - 5, i, set("been was got 's were it")) >= 0) {
      put('prior_damage', i, 1, denied ? 'no' : 'bad');
      continue;
    }
    if (
      (/^timers?$/.test(n) && norm(i - 1) === 'full') ||
      /^(?:fulltimers?|snowbirds?|weekenders?|boondockers?)$/.test(n)
    ) {
      if (
        /^(?:were|was|are|is|been|two|older|retired|by|from|to|of|'re|'s|had|a|the|full)$/.test(
          norm(n.startsWith('timer') ? i - 2 : i - 1),
        ) &&
        any(clause.from, i, set('i you most if')) < 0
      )
        put('storage_history', i, 1, 'noted');
      continue;
    }
    if (hits.test(n) && !(n === 'hail' && looks.test(norm(i + 1)))) {
      const never = denied || denialBefore(talk, clause, i) !== undefined;
      const told =
        any(i - 6, i, set("took in got was had has been seen through 's went hit survived a an from by")) >=
        0;
      if (never) put('prior_damage', i, 1, 'no');
      else if (told && any(clause.from, clause.to, set('if could would might when')) < 0)
        put('prior_damage', i, 1, 'bad');
      continue;
    }
    const own = clause.mentions.some(
      (m) => !m.aside && !m.weak && m.to <= i && !/^(?:coach|storage_history)$/.test(m.parts[0] ?? ''),
    );
    if (own) continue;
    if (idle.has(n) && any(clause.from, i, set('i you water people we')) < 0) {
      const where = any(i + 1, i + 9, lots);
      const long = any(i + 1, i + 7, set('years months winters since winter seasons'));
      const subject =
        /^(?:it|she|he|they|coach|rig|'s|always|has|just|was|been|and|only)$/.test(norm(i - 1)) ||
        i === clause.from;
      const leads = /^(?:in|under|out|outside|inside|indoors|at|there|here|for|since|on|empty|unused|idle)$/;
      const span = /^(?:sat|sits|sitting|stood|parked|stored)$/.test(n) && long >= 0;
      const place =
        where >= 0 && (leads.test(norm(i + 1)) || lots.has(norm(i + 1)) || span || where - i <= 4);
      if (subject && (place || span) && !clause.mentions.some((m) => m.from === i - 1 && !m.weak)) {
        put('storage_history', i, 1, 'noted');
        return out;
      }
    }
    if (
      uses.test(n) &&
      any(clause.from, i, set('he she they we owner owners folks couple who only just was')) >= 0
    ) {
      const it = /^(?:it|her|this|that|in|only|just|out|full|as)$/.test(norm(i + 1)) || i + 1 === clause.to;
      const span = any(i + 1, i + 9, useSpans);
      const full =
        /^(?:full|fulltime)$/.test(norm(i + 1)) ||
        /^full$/.test(norm(i + 3)) ||
        n === 'fulltimed' ||
        n === 'snowbirded';
      const person = !/^(?:they|we)$/.test(norm(i - 1)) || it;
      if (it && person && (full || (span >= 0 && /^(?:used|use|uses|took|lived|live|camped)$/.test(n)))) {
        put('storage_history', i, 1, 'noted');
        return out;
      }
    }
  }
  return out;
}
