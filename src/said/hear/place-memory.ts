// Why: a place said once holds for what is said next of the same thing; this keeps which, clause by clause, and where the walk is.
import { partOf } from '../../catalogue/index.ts';
import type { Clause } from './clause.ts';
import type { Marks } from './marks.ts';
import type { Mention } from './mention.ts';
import type { NumberSpan } from './number-span.ts';
import { type PlaceHit, type PlaceParts, placeIdOf } from './place-words.ts';
import { across, besideNumber, cornered, isAlongside, merge, walkSideOf } from './talk-place.ts';

interface Placed {
  readonly place: PlaceParts;
  readonly at: number;
}

/** Where these are named the walk is no longer along a side. */
const offSide = new Set(['front', 'rear', 'roof', 'cab', 'living', 'bath-bedroom']);

/** The places said so far. */
export class PlaceMemory {
  private readonly marks: Marks;
  private readonly placed = new Map<string, Placed>();
  /** As it was before the clause at hand. */
  private before = new Map<string, Placed>();
  private readonly lastNamed = new Map<string, number>();
  private walkSide: PlaceParts | undefined;
  /** What the last place was said of. */
  private last: { readonly parts: readonly string[]; readonly at: number } = { parts: [], at: -99 };

  constructor(marks: Marks) {
    this.marks = marks;
  }

  /** A new station: what was said of places at the old one is over. */
  leave(): void {
    this.placed.clear();
  }

  /** Takes note of the places in a clause. `mentions` are its parts of this coach, `lately` those talked about before. */
  enter(clause: Clause, mentions: readonly Mention[], lately: readonly string[], elsewhere: boolean): void {
    for (const m of mentions) {
      for (const p of m.parts) this.lastNamed.set(p, m.from);
      if (
        !m.weak &&
        m.parts[0] !== 'slide' &&
        this.marks.words[m.from - 1]?.norm !== 'like' &&
        offSide.has(partOf(m.parts[0] ?? '')?.station ?? '')
      )
        this.walkSide = undefined;
    }
    this.before = clause.places.length > 0 ? new Map(this.placed) : this.placed;
    for (const hit of clause.places)
      if ((!elsewhere || hit.other) && !this.isAside(hit)) this.note(clause, hit, mentions, lately);
  }

  private note(clause: Clause, hit: PlaceHit, parts: readonly Mention[], lately: readonly string[]): void {
    if (hit.other === 'side' && parts.length === 0) this.walkSide = across(this.walkSide, 'side');
    if (hit.side && !hit.depth && !hit.end && (parts.length === 0 || clause.to - clause.from <= 7))
      this.walkSide = { side: hit.side };
    else if (parts.length === 0 && !hit.side && hit.end && clause.to - clause.from <= 5)
      this.walkSide = undefined;
    const owner = this.ownerOf(hit, parts);
    const named = owner?.parts;
    // "left front has code ...": a weak word is not what the corner is of
    const loose = !named || owner?.weak || (owner !== undefined && owner.from === hit.from);
    const owners = new Set(
      loose ? [...(named ?? []), ...lately, ...(hit.from - this.last.at < 30 ? this.last.parts : [])] : named,
    );
    if (hit.depth || [...owners].some((p) => cornered.has(p)) || (loose && hit.side && hit.end))
      owners.add('tire');
    this.last = { parts: named ?? this.last.parts, at: hit.from };
    for (const part of owners) {
      const place = merge(part, this.placed.get(part)?.place, hit);
      if (place) this.placed.set(part, { place, at: hit.from });
    }
  }

  private ownerOf(hit: PlaceHit, parts: readonly Mention[]): Mention | undefined {
    const after = parts.find((m) => m.from >= hit.to && m.from - hit.to <= 2);
    const before = [...parts].reverse().find((m) => m.to <= hit.from);
    const inside = parts.find((m) => m.from <= hit.from && m.to >= hit.from);
    return inside ?? after ?? before;
  }

  /** Behind, by, around: where a thing is seen, not which one it is. */
  private isAside(hit: PlaceHit): boolean {
    const { words } = this.marks;
    const a = words[hit.from - 1]?.norm ?? '';
    const b = a === 'the' ? (words[hit.from - 2]?.norm ?? '') : a;
    return /^(?:by|near|behind|around|underneath)$/.test(b) && words[hit.from - 1]?.stop === 0 && !hit.side;
  }

  /** The place of a fact of `part` that turns on word `at` in `clause`. */
  placeOf(part: string, at: number, clause: Clause, span?: NumberSpan): string | undefined {
    const all = clause.places.filter((h) => !this.isAside(h));
    const own = span ? besideNumber(clause, all, span) : undefined;
    const hits = own ?? all;
    const said = own ?? hits.filter((h) => h.from <= at);
    const corner = cornered.has(part);
    const held = corner ? (this.before.get(part) ?? this.before.get('tire')) : this.placed.get(part);
    let place: PlaceParts | undefined;
    if (corner) {
      place = held && (part === 'tire' || at - held.at < 90) ? held.place : undefined;
      // "the date of the inner one I did not get": a whole corner said later in the clause
      const later = !span && hits[0] && ((hits[0].side && hits[0].end) || hits[0].depth) ? 1 : 0;
      // "forty pounds left front": right behind the number, and nothing before it
      const behind = span && hits[0] && hits[0].from - span.to <= 1 ? 1 : 0;
      for (const h of said.length > 0 ? said : hits.slice(0, held ? behind || later : 1))
        place = merge(part, place, h);
    } else {
      for (const h of said.length > 0 ? said : hits.slice(0, 1)) place = merge(part, place, h);
      const again = this.lastNamed.get(part) ?? -1;
      // "the seal is on order" right after "its seal is torn at the rear" is that same seal
      const same =
        again - (held?.at ?? 0) < 25 &&
        /^(?:the|that|this|it)$/.test(this.marks.words[again - 1]?.norm ?? '');
      const fresh = again > (held?.at ?? 0) + 4 && !same;
      if (!place && held && !fresh && at - held.at < 60) place = held.place;
      place ??= this.ahead(part, clause);
    }
    place ??= walkSideOf(part, this.walkSide);
    return place ? placeIdOf(part, place) : undefined;
  }

  /** The side of the walk, for a part along the sides that nobody gave a place. */
  walkingBy(part: string): string | undefined {
    if (!this.walkSide?.side || !isAlongside(part)) return undefined;
    return this.walkSide.side === 'left' ? 'driver side' : 'passenger side';
  }

  /** "There is a crack in it, rising from the bottom on the passenger side": said in the next clause, of nothing else. */
  private ahead(part: string, clause: Clause): PlaceParts | undefined {
    const { sentenceOf, mentionAt, numberAt, placeAt } = this.marks;
    const named = clause.mentions.some((m) => m.parts.includes(part));
    for (let i = clause.to; named && i < clause.to + 8 && sentenceOf[i] === clause.sentence; i++) {
      const hit = placeAt.from(i);
      if (hit && (hit.side || hit.end)) return merge(part, undefined, hit);
      if (mentionAt.from(i) || numberAt.from(i)) return undefined;
    }
    return undefined;
  }
}
