// Why: the quality of hearing is a number, got by a script that does not know how the hearing works; test and `npm run hear-score` share it.
import { readdirSync, readFileSync } from 'node:fs';
import { hear } from '../../src/said/hear/hear.ts';
import { type HearRow, hearJson } from '../../src/said/hear/hear-json.ts';
import type { Heard } from '../../src/said/hear/heard.ts';
import { readTranscript } from '../../src/said/transcript/read-transcript.ts';

/** What the measure says of one walk; rates are 0 to 1. */
export interface WalkScore {
  readonly gold: number;
  readonly matched: number;
  readonly recall: number;
  readonly recall_must: number;
  readonly precision: number;
  readonly false: number;
  readonly false_distractor: number;
  readonly hedged_accuracy: number;
  readonly hedged_recall: number;
  readonly hedged_precision: number;
  readonly position_accuracy: number;
  readonly position_wrong: number;
  readonly unit_accuracy: number;
  readonly negation_errors: number;
  readonly corrections: {
    readonly gold: number;
    readonly final_found: number;
    readonly final_gold: number;
    readonly wrong_value_extracted: number;
  };
  readonly praise: { readonly gold: number; readonly recall: number; readonly taken_as_fact: number };
  readonly by_kind: Readonly<Record<string, { readonly gold: number; readonly hit: number }>>;
}

/** A fact of the gold file. */
export interface GoldFact {
  readonly id: string;
  readonly t: number;
  readonly kind: string;
  readonly component: string;
  readonly attribute?: string;
  readonly value?: number | string;
  readonly unit?: string;
  readonly position?: string;
  readonly must: boolean;
  readonly quote: string;
}

type Asked = HearRow & { readonly component: string; readonly position?: string; readonly attribute: string };
/** The measure's whole answer. */
export interface Measured {
  readonly S: WalkScore;
  readonly missed: readonly GoldFact[];
  readonly bad: readonly (readonly [observation: Asked, why: string])[];
}

export const walkFolder = new URL('../data/walks/', import.meta.url);
const { score } = (await import(new URL('score.mjs', walkFolder).href)) as {
  score: (gold: unknown, observations: unknown) => Measured;
};

const unitNames: Readonly<Record<string, string>> = {
  '[psi]': 'psi',
  '[gal_us]': 'gal',
  '[lb_av]': 'lb',
  '[mi_i]': 'mi',
  '[ft_i]': 'ft',
  '[degF]': 'degF',
  '[HP]': 'hp',
};

/** The walks of a folder (the project's own when none is given), in the order of their numbers. */
export const walkNames = (dir: URL = walkFolder): string[] =>
  readdirSync(dir)
    .filter((f) => f.endsWith('.gold.json'))
    .map((f) => f.replace('.gold.json', ''))
    .sort((a, b) => Number(a.slice(1)) - Number(b.slice(1)));

/** Walks that are only scored: nobody reads them while the hearing is worked on. */
export const sealedWalks: ReadonlySet<string> = new Set(['w18', 'w19', 'w20', 'w21']);
export const openWalks = (): string[] => walkNames().filter((w) => !sealedWalks.has(w));

/** As recognisers write that give neither capitals nor stops. */
export const withoutStops = (vtt: string): string =>
  vtt
    .split('\n')
    .map((line) =>
      /-->|^WEBVTT|^NOTE/.test(line) ? line : line.toLowerCase().replace(/[.,!?;:]+(?=\s|$)|["“”]/g, ''),
    )
    .join('\n');

/** Measures what was heard of a walk against its gold file; `wrong` are the indexes of observations it does not bear out. */
export function measureRows(
  heard: Heard,
  walk: string,
  dir: URL = walkFolder,
): Measured & { readonly rows: readonly HearRow[]; readonly wrong: ReadonlySet<number> } {
  const gold: unknown = JSON.parse(readFileSync(new URL(`${walk}.gold.json`, dir), 'utf8'));
  const rows = hearJson(heard);
  const asked = rows.map((r) => ({
    ...r,
    component: r.part,
    ...(r.place === undefined ? {} : { position: r.place }),
    attribute: r.aspect,
    ...(r.unit === undefined ? {} : { unit: unitNames[r.unit] ?? r.unit }),
  }));
  const measured = score(gold, asked);
  const bad = new Set(measured.bad.map(([o]) => o as unknown));
  return { ...measured, rows, wrong: new Set(asked.flatMap((o, i) => (bad.has(o) ? [i] : []))) };
}

/** Hears a walk and measures what was heard against its gold file. */
export function measureWalk(
  walk: string,
  change = (vtt: string): string => vtt,
  dir: URL = walkFolder,
): ReturnType<typeof measureRows> {
  const text = change(readFileSync(new URL(`${walk}.vtt`, dir), 'utf8'));
  return measureRows(hear(readTranscript(`${walk}.vtt`, text).cues), walk, dir);
}
