// Why: "it", "this one" and a bare number mean whatever the talk is about; this keeps what that is, clause by clause.
import type { Clause } from './clause.ts';
import { headingOf, stationPart } from './heading.ts';
import type { AspectHit, Marks } from './marks.ts';
import type { Mention } from './mention.ts';
import type { NumberSpan } from './number-span.ts';
import { PlaceMemory } from './place-memory.ts';
import type { Scopes } from './scope.ts';
import { cornered } from './talk-place.ts';
import { WhereMemory } from './where.ts';

/** Pieces that nearly every part has: they mean the part the talk is about. */
const subparts = new Set('motor rubber cap glass hose gauge valve switch'.split(' '));

const small =
  /^(?:the|a|an|this|that|these|those|my|your|our|its|his|her|and|but|so|now|okay|ok|well|then|also|how|how's|what|what's|about|is|are|'s|'re|does|do|did|has|any|both|all|each|every|big|little|old|new|front|rear|left|right|main|whole)$/;

/** What the talk is about, while clauses go by. */
export class Talk {
  readonly marks: Marks;
  readonly scopes: Scopes;
  /** Parts named lately, newest first. */
  recent: { parts: readonly string[]; at: number; weak: boolean }[] = [];
  /** The failure heard last, and where: a measure right after it is of it. */
  fault: { readonly part: string; readonly place?: string; readonly at: number } | undefined;
  /** The clause in which something was last said to be there: a list may go on from it. */
  listed: { readonly at: number; readonly sentence: number } | undefined;
  /** The part a job was last spoken of, and where. */
  advised: { readonly part: string; readonly at: number } | undefined;
  /** The parts last said to be not known, and where. */
  unknownOf: { readonly parts: readonly string[]; readonly at: number } | undefined;
  /** The part whose failure was last given a reason, and where. */
  guessed: { readonly part: string; readonly at: number } | undefined;
  /** The part a heading named. */
  section: readonly string[] = [];
  private readonly places: PlaceMemory;
  private readonly wheres: WhereMemory;
  /** Aspects named in the clause before, where it gave no number: "the gross weight, the sticker says ...". */
  lead: readonly AspectHit[] = [];
  private previous: Clause | undefined;
  /** The clauses gone by, newest first: at most six. */
  passed: readonly Clause[] = [];
  private station = '';
  private sentence = -1;
  private sentenceMentions: Mention[] = [];
  /** What was last told of another coach, of prices or the like. */
  private told: { readonly parts: readonly string[]; readonly at: number } | undefined;

  /** The likeliest station of each clause. */
  private readonly path: readonly string[];

  constructor(marks: Marks, scopes: Scopes, path: readonly string[] = []) {
    this.path = path;
    this.marks = marks;
    this.places = new PlaceMemory(marks);
    this.wheres = new WhereMemory(marks);
    this.scopes = scopes;
  }

  /** Takes note of a clause before it is read. */
  enter(clause: Clause): void {
    const p = this.previous;
    // "what's the hours on it? Two eleven.": a question asks for what its answer is of
    const asked = p !== undefined && this.marks.words[p.to - 1]?.asks === true && p.to === clause.from;
    this.lead = p && (p.sentence === clause.sentence || asked) && p.numbers.length === 0 ? p.aspects : [];
    this.previous = clause;
    if (p) this.passed = [p, ...this.passed.slice(0, 5)];
    if (clause.sentence !== this.sentence) {
      this.sentence = clause.sentence;
      this.sentenceMentions = [];
    }
    const station = headingOf(this.marks, clause);
    if (station !== undefined && station !== this.station) this.leave(station);
    const elsewhere = this.scopes.elsewhere[clause.from] === 1;
    this.backHere(clause, elsewhere);
    for (const m of clause.mentions) {
      if (m.aside || elsewhere) continue;
      this.sentenceMentions.push(m);
      if (
        !m.weak ||
        (m === clause.mentions[0] && this.isSubject(m, clause)) ||
        (clause.mentions.length === 1 && m.from - clause.from <= 1 && clause.to - clause.from <= 8)
      ) {
        this.recent.unshift({ parts: m.parts, at: m.from, weak: m.weak });
        if (this.recent.length > 8) this.recent.pop();
      }
      if (clause.to - clause.from === m.to - m.from && !m.weak) this.section = m.parts;
    }
    const own = clause.mentions.filter((m) => !m.aside);
    const lately = this.recent.slice(0, 3).flatMap((r) => r.parts);
    this.places.enter(clause, own, lately, elsewhere);
    this.wheres.enter(clause, own, elsewhere);
  }

  /** "A new awning is twelve hundred. This one needs fabric": here it is of what the other talk was of. */
  private backHere(clause: Clause, elsewhere: boolean): void {
    const norm = (k: number): string => this.marks.words[k]?.norm ?? '';
    const named = clause.mentions.filter((m) => !m.aside && !m.weak);
    if (elsewhere) {
      const first = named[0];
      if (first) this.told = { parts: first.parts, at: first.from };
      return;
    }
    if (!this.told || clause.from - this.told.at > 24) return;
    const k = /^(?:and|but|so|now|well|anyway|okay|yeah)$/.test(norm(clause.from))
      ? clause.from + 1
      : clause.from;
    const here = /^(?:this|these|ours)$/.test(norm(k)) && !named.some((m) => m.from <= k + 2);
    if (here) this.recent.unshift({ parts: this.told.parts, at: clause.from - 1, weak: false });
    if (here || named.length > 0) this.told = undefined;
  }

  /** True where only small words stand before it: "how's the step?", "and the step comes out". */
  private isSubject(m: Mention, clause: Clause): boolean {
    for (let k = clause.from; k < m.from; k++) if (!small.test(this.marks.words[k]?.norm ?? '')) return false;
    return true;
  }

  /** What "it" is where the walk stands, if nothing is named. */
  get herePart(): string | undefined {
    return stationPart[this.path[this.previous?.index ?? 0] ?? ''] ?? stationPart[this.station];
  }

  /** A new station: nothing that was talked about at the old one is meant by "it" any more. */
  private leave(station: string): void {
    this.station = station;
    this.recent = [];
    this.section = [];
    this.fault = undefined;
    this.places.leave();
    this.sentenceMentions = [];
  }

  /** The place of a fact of `part` that turns on word `at` in `clause`. */
  placeOf(part: string, at: number, clause: Clause, span?: NumberSpan): string | undefined {
    return this.places.placeOf(part, at, clause, span);
  }

  /** What else says where a fact is, or under what it was read. */
  whereOf(part: string, at: number, clause: Clause, place?: string): string | undefined {
    const where = this.wheres.whereOf(part, at, clause);
    return place === undefined ? (where ?? this.places.walkingBy(part)) : where;
  }

  /**
   * The parts that a fact turning on words `from`..`to` may be about, likeliest first: named before it in the clause,
   * right after it, earlier in the sentence, and what the talk was about.
   */
  partsFor(from: number, to: number, clause: Clause): string[] {
    const out: string[] = [];
    const add = (parts: readonly string[] | undefined): void => {
      for (const p of parts ?? []) if (!out.includes(p)) out.push(p);
    };
    const own = clause.mentions.filter((m) => !m.aside);
    if (own.length === 0) {
      const around = clause.mentions.find((m) => m.from >= to && m.from - to <= 3);
      if (
        around &&
        this.marks.words
          .slice(to, around.from)
          .some(
            (w) =>
              /^(?:around|from|at|round|through|under|underneath|beneath|below)$/.test(w.norm) ||
              (/^(?:over|above|by)$/.test(w.norm) &&
                /^(?:leaks?|in|water|drips?)$/.test(this.marks.words[to - 1]?.norm ?? '')),
          )
      )
        add(around.parts);
    }
    // "the wall reads twenty-six, that's wet": what the sentence began with
    const lead = this.marks.words[clause.from]?.norm ?? '';
    if (own.length === 0 && /^(?:it|that|they|those|this|which|these|he|she)$/.test(lead)) {
      const said = this.sentenceMentions.filter((m) => m.to <= from).at(-1);
      add(said?.parts);
    }
    const inside = own.find((m) => m.from <= from && m.to >= to);
    add(inside?.parts);
    const after = own.filter((m) => m.from >= to);
    const before = own.filter((m) => m.to <= from);
    const next = after[0];
    const last = before.filter((m) => !m.weak).at(-1) ?? before.at(-1);
    if (last && !last.weak) add(last.parts);
    if (next && (next.from - to <= 1 || !last) && !next.weak) add(next.parts);
    const sub = before.every((m) => m.weak && subparts.has(this.marks.words[m.from]?.norm ?? ''));
    if (before.length > 0 && sub) this.addLately(from, add);
    for (const m of [...before].reverse()) add(m.parts);
    if (next && next.from - to <= 7) add(next.parts);
    this.addLately(from, add);
    for (const m of [...this.sentenceMentions].reverse()) if (m.from < from) add(m.parts);
    add(this.section);
    const here = this.herePart;
    if (here) add([here]);
    add(['coach']);
    return out;
  }

  private addLately(from: number, add: (parts: readonly string[]) => void): void {
    for (const m of [...this.sentenceMentions].reverse()) if (m.from < from && !m.weak) add(m.parts);
    for (const r of this.recent) if (r.at < from && from - r.at < 90) add(r.parts);
  }

  /** True when the part was named in the clause or sentence, or was the last one named, not long before `at`. */
  isClose(part: string, at: number, clause: Clause): boolean {
    if (clause.mentions.some((m) => m.parts.includes(part))) return true;
    if (this.sentenceMentions.some((m) => m.from < at && m.parts.includes(part))) return true;
    const latest = this.recent.find((r) => r.at < at);
    const placed = clause.places.length > 0 && cornered.has(part);
    return (latest?.parts.includes(part) ?? false) && at - (latest?.at ?? 0) < (placed ? 200 : 45);
  }

  /** The one part a fact is about, if there is any. */
  partFor(from: number, to: number, clause: Clause): string | undefined {
    return this.partsFor(from, to, clause)[0];
  }

  /** Hedged and hearsay of a word. */
  doubtAt(at: number): { hedged: boolean; saidBy?: string } {
    const saidBy = this.scopes.saidBy[at];
    const hedged = this.scopes.guessed[at] === 1 || saidBy !== undefined;
    return saidBy === undefined ? { hedged } : { hedged, saidBy };
  }
}
