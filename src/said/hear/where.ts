// Why: beside the corner or side of a thing, a room, a landmark or the load it was read under says which fact this is.
import { partOf } from '../../catalogue/index.ts';
import type { Clause } from './clause.ts';
import type { Marks } from './marks.ts';
import type { Mention } from './mention.ts';
import { type Condition, conditionsIn, kindsFor, type Under } from './where-condition.ts';
import { type Landmark, landmarksIn } from './where-landmark.ts';
import { namesSpot, roomed, roomOfPart, rooms } from './where-table.ts';
import type { Word } from './word.ts';

/** How many words a condition holds when nothing else is said of it. */
const holds: Readonly<Record<Under, number>> = {
  energy: 45,
  load: 70,
  engine: 90,
  battery: 14,
  air: 40,
  road: 60,
};
/** Stations at which the drive is over. */
const offRoad = new Set(['roof', 'living', 'bath-bedroom', 'curb-side', 'road-side', 'papers', 'bays']);
const leadIn = /^(?:and|okay|ok|so|now|then|the|in|into|back|here|up|your|this|alright|a|on|to|next|got)$/;
const modified =
  /^(?:vents?|sinks?|doors?|fans?|slides?|windows?|tv|ac|air|wall|ceiling|corner|one|plugs?|outlets?|gfci|gfi|g|light|lights|faucet)$/;

/** Named as what is looked at, and not just as where. */
const strong = (m: Mention | undefined): boolean => m !== undefined && !m.aside && !m.weak;

interface Held {
  readonly text: string;
  readonly at: number;
  readonly part: string;
}

/** What was said of rooms, landmarks and conditions, while clauses go by. */
export class WhereMemory {
  private readonly marks: Marks;
  private readonly words: readonly Word[];
  /** Those of a short clause before that named no part: "over by the slide, it reads ...". */
  private lead: readonly Landmark[] = [];
  private landmarks: readonly Landmark[] = [];
  private conditions: readonly Condition[] = [];
  private readonly state = new Map<Under, Held>();
  private readonly beside = new Map<string, Held>();
  private readonly named = new Map<string, number>();
  private room: { readonly text: string; readonly at: number; readonly firm: boolean } | undefined;
  private lastPart = '';
  private previous: Clause | undefined;

  constructor(marks: Marks) {
    this.marks = marks;
    this.words = marks.words;
  }

  /** Takes note of a clause. `mentions` are its parts of this coach. */
  enter(clause: Clause, mentions: readonly Mention[], elsewhere: boolean): void {
    const alone =
      this.previous?.mentions.every((m) => m.aside || m.weak) && this.previous.to - this.previous.from <= 8;
    this.lead = alone && this.previous?.to === clause.from ? this.landmarks : [];
    this.previous = clause;
    this.landmarks = landmarksIn(this.words, clause);
    this.conditions = conditionsIn(this.words, clause);
    if (elsewhere) return;
    for (const m of mentions) this.notePart(m);
    this.noteRoom(clause);
    for (const c of this.conditions)
      if (c.text === '') this.state.delete(c.kind);
      else this.state.set(c.kind, { text: c.text, at: c.at, part: this.lastPart });
  }

  private notePart(m: Mention): void {
    const part = m.parts[0] ?? '';
    this.named.set(part, m.from);
    if (m.weak) return;
    this.lastPart = part;
    const station = partOf(part)?.station ?? '';
    if (offRoad.has(station)) for (const k of ['engine', 'road'] as const) this.state.delete(k);
    for (const k of ['energy', 'load', 'battery'] as const)
      if (kindsFor(part).includes(k) && this.state.get(k)?.part !== part) this.state.delete(k);
    const room = roomOfPart[part];
    const area =
      this.room?.firm &&
      /^(?:rear|front|half bath|rear bath)$/.test(this.room.text) &&
      m.from - this.room.at < 60;
    if (room && !area)
      this.room = { text: room, at: m.from, firm: this.room?.text === room && this.room.firm };
    else if (this.room && !roomed.has(part) && station !== 'bath-bedroom') this.room = undefined;
  }

  private noteRoom(clause: Clause): void {
    for (let i = clause.from; i < Math.min(clause.to, clause.from + 6); i++) {
      const n = this.words[i]?.norm ?? '';
      const next = this.words[i + 1]?.norm ?? '';
      const two = this.words[i]?.stop === 0 ? rooms[`${n} ${next}`] : undefined;
      const room = two ?? rooms[n];
      if (room) {
        const after = i + (two ? 2 : 1);
        const joined = this.words[after - 1]?.stop === 0;
        if (!joined || !modified.test(this.words[after]?.norm ?? ''))
          this.room = { text: room, at: i, firm: true };
        return;
      }
      if (!leadIn.test(n)) return;
    }
  }

  /** What else says where the fact of `part` turning on word `at` is, or under what it was read. */
  whereOf(part: string, at: number, clause: Clause): string | undefined {
    const bits = new Set<string>();
    for (const kind of kindsFor(part)) {
      const c = this.conditionOf(kind, at, clause);
      if (c) bits.add(c);
    }
    const beside = this.besideOf(part, at, clause);
    if (beside) bits.add(beside);
    const room = this.room;
    if (
      !beside &&
      room &&
      roomed.has(part) &&
      (room.firm || roomOfPart[part] === undefined) &&
      at - room.at < (room.firm ? 60 : 16) &&
      at >= room.at
    )
      bits.add(room.text);
    return bits.size === 0 ? undefined : [...bits].join(', ');
  }

  private conditionOf(kind: Under, at: number, clause: Clause): string | undefined {
    const here = this.conditions.filter((c) => c.kind === kind);
    const said = here.filter((c) => c.at <= at).at(-1) ?? here[0] ?? this.conditionAhead(kind, clause);
    if (said) return said.text === '' ? undefined : said.text;
    const held = this.state.get(kind);
    return held && at - held.at < holds[kind] && at >= held.at ? held.text : undefined;
  }

  /** "Thirty-six by the thermometer, that's on the electric": said right after. */
  private conditionAhead(kind: Under, clause: Clause): Condition | undefined {
    const { sentenceOf } = this.marks;
    if (kind === 'engine' || kind === 'road' || sentenceOf[clause.to] !== clause.sentence) return undefined;
    if (!/^(?:that|this|on|with|under|at)$/.test(this.words[clause.to]?.norm ?? '')) return undefined;
    let to = clause.to;
    while (to < clause.to + 7 && sentenceOf[to] === clause.sentence) to++;
    return conditionsIn(this.words, { from: clause.to, to }).find((c) => c.kind === kind);
  }

  private besideOf(part: string, at: number, clause: Clause): string | undefined {
    const own = this.landmarks.filter((l) => this.isOf(l, part, at, clause));
    const next = clause.numbers.find((s) => s.from > at)?.from ?? clause.to;
    const hit =
      own.find((l) => l.from > at && l.from < next) ?? own.filter((l) => l.from <= at).at(-1) ?? own[0];
    if (hit) {
      this.beside.set(part, { text: hit.text, at: Math.max(at, hit.to), part });
      return hit.text;
    }
    for (let i = clause.from; i < clause.to; i++) {
      const own = namesSpot[this.words[i]?.norm ?? ''];
      if (own) return own;
    }
    const near = this.lead.at(-1) ?? this.ahead(part, clause);
    if (near) {
      this.beside.set(part, { text: near.text, at: Math.max(at, near.to), part });
      return near.text;
    }
    const held = this.beside.get(part);
    if (!held || at - held.at > 40 || at < held.at || (this.named.get(part) ?? -1) > held.at)
      return undefined;
    return held.text;
  }

  /** A landmark right behind another part says where that one is. */
  private isOf(l: Landmark, part: string, at: number, clause: Clause): boolean {
    const owner = clause.mentions.filter((m) => !m.aside && m.to <= l.from).at(-1);
    return !owner || owner.weak || owner.parts.includes(part) || owner.from <= at;
  }

  /** "It's dried up, and quit around the skylight": said in the next clause, of nothing else. */
  private ahead(part: string, clause: Clause): Landmark | undefined {
    const { sentenceOf, mentions, mentionAt, numberAt } = this.marks;
    if (mentions.length === 0 || !clause.mentions.some((m) => m.parts.includes(part))) return undefined;
    let to = clause.to;
    while (
      to < clause.to + 8 &&
      sentenceOf[to] === clause.sentence &&
      !numberAt.from(to) &&
      !strong(mentionAt.from(to))
    )
      to++;
    return landmarksIn(this.words, { from: clause.to, to: Math.min(this.words.length, to + 2) }).find(
      (l) => l.from < to,
    );
  }
}
