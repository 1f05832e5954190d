// Why: the shape of a rule. One rule compares one reading with limits, or one sight with a list of acceptable words.
import type { Fact, Facts } from '../known/facts.ts';
import type { Value } from '../said/entry.ts';
import type { Citation, Limit } from '../standards/standard.ts';

export type Verdict = 'sound' | 'watch' | 'repair' | 'stop' | 'not seen';
export type Outcome = 'meets' | 'fails' | 'cannot tell';

/** What could happen to a person. Danger gives the verdict stop, unlawful and defect give repair, wear gives watch. */
export type Weight = 'danger' | 'unlawful' | 'defect' | 'wear';

export type Must = 'at least' | 'more than' | 'at most' | 'less than';

/** A limit that stands on this unit's own plate: a reading, itself doubtful. */
export interface PlateLimit {
  readonly plate: Fact;
  readonly says: string;
}

/** Compares a number with a limit. */
export interface NumberStep {
  readonly weight: Weight;
  readonly must: Must;
  /** A published limit, or one read off the unit's own plate; undefined when the plate has not been read. */
  readonly limit: Limit | ((facts: Facts, place: string | undefined) => PlateLimit | undefined);
}

/** Compares a word (a state, yes or no, a text) with what is acceptable. */
export interface WordStep {
  readonly weight: Weight;
  readonly mustBe: 'one of' | 'none of';
  readonly words: readonly string[];
  readonly cites: readonly [Citation, ...Citation[]];
}

export type Step = NumberStep | WordStep;

/** Something known beside the fact of a proof. */
export interface ProofFact {
  readonly part: string;
  readonly place?: string;
  readonly aspect: string;
  readonly value: Value;
}

/** A worked case of a rule. Every rule has one on each published number, and one where nobody looked. */
export interface Proof {
  readonly given: Value | undefined;
  readonly outcome: Outcome;
  readonly verdict: Verdict;
  /** What else is known, for a rule whose limit stands on the unit's own plate or that asks about something beside it. */
  readonly beside?: readonly ProofFact[];
  /** Who published this answer, where somebody else did. */
  readonly from?: string;
}

/** One check. */
export interface Rule {
  /** Also its file's name. */
  readonly id: string;
  /** The question, as a person would ask it. */
  readonly asks: string;
  readonly why: string;
  readonly part: string;
  readonly aspect: string;
  /** Other aspects under which people give the same answer ("crack" for "cracks"); asked where the rule's own is silent. */
  readonly also?: readonly string[];
  /** Beside the part's kinds and the unit's equipment. */
  readonly appliesTo?: (facts: Facts, place: string | undefined) => boolean;
  /** Places at which an answer is expected even when nothing was said; absent: once for the part. */
  readonly expectedAt?: (facts: Facts) => readonly string[];
  /** How to look or measure. */
  readonly look: string;
  /** Minutes it takes to look. */
  readonly minutes: number;
  /** Worst first: the first one that fails gives the verdict. */
  readonly steps: readonly [Step, ...Step[]];
  readonly says: {
    readonly meets: string;
    readonly fails: string;
    readonly cannotTell: string;
    readonly notSeen: string;
  };
  /** What to do when it fails. */
  readonly next: string;
  /** Who may do it. */
  readonly who: string;
  /** Key of judged/caution.ts: shown before the look and beside the finding. */
  readonly caution?: string;
  readonly proofs: readonly [Proof, ...Proof[]];
}
