// Why: what leaves the building, as plain documents without layout; a door makes HTML, PDF and WebVTT of them.
import type { Figure } from '../figured/figure.ts';
import type { Finding } from '../judged/finding.ts';
import type { Verdict } from '../judged/rule.ts';
import type { Fact, Facts } from '../known/facts.ts';
import type { StationCoverage, UnitRecord } from '../known/record.ts';
import type { Job } from '../planned/job.ts';
import type { PriceView } from '../priced/price.ts';
import type { Observation } from '../said/entry.ts';
import type { Day } from '../units/day.ts';

/** A sentence of the listing. */
export interface Claim {
  readonly id: string;
  readonly text: string;
  /** Which part of the listing it stands in. */
  readonly section:
    | 'headline'
    | 'identity'
    | 'chassis'
    | 'house'
    | 'disclosure'
    | 'not checked'
    | 'praise'
    | 'money';
  readonly standing: 'backed' | 'unbacked' | 'contradicted';
  /** How the thing is known: told apart in every document. */
  readonly basis: 'measured' | 'seen' | 'label' | 'figured' | 'told' | 'guessed' | 'none';
  readonly evidence: readonly Observation[];
  readonly facts: readonly Fact[];
  readonly figures: readonly string[];
  readonly findings: readonly string[];
  /** Why it is not backed, and what to say instead. */
  readonly rewording?: string;
  /** Whether it stands in the published text. A contradicted claim never does. */
  readonly published: boolean;
  /** Fields of the unit's own entry that it rests on ("year", "asking"): what the dealership wrote down before the walk. */
  readonly paper?: readonly string[];
  /** The station whose coverage it reports: evidence that nobody looked. */
  readonly station?: string;
}

export interface Chapter {
  readonly start: number;
  readonly end: number;
  readonly station: string;
  readonly title: string;
  /** The recording whose clock `start` and `end` are read on, in seconds. */
  readonly media: string;
}

/** The listing: claims in order, and what schema.org is told. */
export interface Listing {
  readonly title: string;
  readonly claims: readonly Claim[];
  /** schema.org Vehicle as JSON-LD. */
  readonly jsonLd: Readonly<Record<string, unknown>>;
}

export interface ReportStation {
  readonly station: string;
  readonly findings: readonly Finding[];
  readonly facts: readonly Fact[];
  readonly coverage: StationCoverage;
}

/** The condition report. */
export interface Report {
  readonly title: string;
  readonly on: Day;
  readonly invented: boolean;
  readonly tally: Readonly<Record<Verdict, number>>;
  /** Stops and repairs, worst first. */
  readonly first: readonly Finding[];
  readonly stations: readonly ReportStation[];
  readonly conflicts: readonly Fact[];
  readonly unknowns: readonly Fact[];
  readonly figures: readonly Figure[];
  readonly walkedBy: readonly string[];
  readonly walkedOn: readonly string[];
}

/** All that a walk yields. */
export interface Packet {
  readonly on: Day;
  readonly record: UnitRecord;
  /** Seen and figured, through the one door. */
  readonly facts: Facts;
  readonly figures: readonly Figure[];
  readonly findings: readonly Finding[];
  readonly jobs: readonly Job[];
  readonly price: PriceView;
  readonly claims: readonly Claim[];
  readonly listing: Listing;
  readonly report: Report;
  readonly chapters: readonly Chapter[];
}

/** All that is there before publishing. */
export type Unpublished = Pick<Packet, 'on' | 'record' | 'facts' | 'figures' | 'findings' | 'jobs' | 'price'>;
