// Why: a failure goes to the part that can fail so: the nearest named one that suits, the one talked about, or the one its word implies.
import type { Clause } from './clause.ts';
import type { DefectWord } from './defect-table.ts';
import { meantByWords } from './meant-by-words.ts';
import { canHurt } from './plausible.ts';
import { suits } from './suits.ts';
import type { Talk } from './talk.ts';
import { wordTable } from './word-table.ts';
import { isNuisance } from './work-said.ts';

/** Parts meant by the failure itself where no part that suits was named, likeliest first. */
const implied: Readonly<Record<string, string>> = wordTable({
  smoke: 'engine',
  smell: 'interior',
  lit: 'dash_gauges',
  soft: 'floor_main',
  stain: 'wall_stains',
  'operates/pulling': 'alignment',
  delamination: 'sidewall_structure',
  'damage/scratched': 'body_paint',
  'damage/dented': 'body_paint',
  peel: 'body_paint',
});

/** The part that a failure word implies by itself. */
export const impliedBy = (word: DefectWord): string | undefined =>
  implied[`${word.aspect}/${word.state}`] ?? implied[word.aspect];

/** What some parts do when all is well: a receptacle trips, magnets hum. */
const inOrder: readonly (readonly [words: RegExp, parts: RegExp])[] = [
  [/^trip(?:s|ped|ping)?$/, /^outlets_gfci$/],
  [
    /^(?:hum|hums|humming|hummed|buzz|buzzes|buzzing|click|clicks)$/,
    /^(?:brake_trailer|water_pump|refrigerator|inverter_charger|fireplace|starter)$/,
  ],
  [
    /^(?:pop|pops|popped|hiss|hisses)$/,
    /^(?:outlets_gfci|parking_brake|air_tanks|brake_chambers|air_gauges)$/,
  ],
  // an alarm is meant to scream
  [/^(?:scream|shriek|wail|howl|squawk|screech)/, /(?:_alarm|horn)$/],
  // what sprays water is meant to
  [
    /^(?:spray|sprays|spraying|sprayed|run|running down|running|gush|gushing|spurt|spurting)$/,
    /^(?:tank_flush|outside_shower|dishwasher|wipers_washers)$/,
  ],
  [/^(?:drip|drips|dripping|sweat|sweats)$/, /^(?:dash_ac|ac_roof|ac_run)$/],
];

/** "Smell gas", "a whiff of propane": the gas is what leaks, wherever it was smelled. */
function isGas(talk: Talk, clause: Clause, from: number, to: number): boolean {
  for (let k = Math.max(clause.from, from - 2); k < Math.min(clause.to, to + 3); k++)
    if (/^(?:gas|propane|lp|lpg|butane)$/.test(talk.marks.words[k]?.norm ?? '')) return true;
  return false;
}

/** What only an engine does. */
const engineOnly =
  /^(?:(?:knock|ping|miss|misfire|sputter|stumble|backfire|cough|lope)(?:s|es|ed|d|ing)?|(?:use|uses|used|using|burn|burns|burned|burning) (?:oil|coolant)|stall(?:s|ed|ing)?|bogs?|puffs? \w+|cranks? slow)$/;

/** What is meant where the talk is about nothing in particular. */
const vagueParts = /^(?:coach|front_cap|rear_cap|sidewall_structure|interior|road_test_drive)$/;

/** The part that a failure turning on `from`..`to` is of; undefined where none can be meant. */
export function failedPart(
  talk: Talk,
  clause: Clause,
  from: number,
  to: number,
  word: DefectWord,
  denied: boolean,
): string | undefined {
  const fit = talk.partsFor(from, to, clause).filter((p) => suits(p, word.aspect, word.state));
  const subject = clause.mentions.filter((m) => !m.aside && !m.weak && m.to <= from).at(-1);
  if (word.aspect === 'smell' && isGas(talk, clause, from, to)) return 'lp_system';
  // "a chip low on the windshield": low is said of the windshield or of nothing
  if (word.aspect === 'level' && subject && !subject.parts.some((p) => fit.includes(p))) return undefined;
  const part =
    /^sul(?:f|ph)at/.test(talk.marks.words[from]?.norm ?? '') && (fit[0] ?? 'coach') === 'coach'
      ? 'house_battery'
      : fit[0];
  // "it slips in fourth": nothing that can be meant was named, the words around it tell
  if (!clause.mentions.some((m) => !m.aside && !m.weak)) {
    const meant = meantByWords(talk, clause, word.aspect, word.state);
    const vague =
      part === undefined ||
      vagueParts.test(part) ||
      (meant === 'transmission' &&
        /^(?:engine|dash_gauges|cruise_control|odometer|steering_gear|engine_oil)$/.test(part));
    if (meant && vague) return meant;
  }
  // "doesn't knock": nothing else does, where nothing was named
  if (
    (part === undefined || vagueParts.test(part)) &&
    engineOnly.test(
      talk.marks.words
        .slice(from, to)
        .map((w) => w.norm)
        .join(' '),
    ) &&
    !clause.mentions.some((m) => !m.aside && !m.weak)
  )
    return 'engine';
  const wanted = impliedBy(word);
  if (wanted !== undefined && (part === undefined || part === 'coach')) return wanted;
  if (part === undefined) return undefined;
  if (wanted === 'alignment' && !/brake|steering|alignment|tire|suspension|hitch|tow/.test(part))
    return wanted;
  const n = talk.marks.words[from]?.norm ?? '';
  if (
    to - from === 1 &&
    !(/^trip/.test(n) && isNuisance(talk.marks.words, clause.from, clause.to)) &&
    inOrder.some(([w, p]) => w.test(n) && p.test(part))
  )
    return undefined;
  const own = clause.mentions.some((m) => m.parts.includes(part));
  return !own && !denied && canHurt(part) && !talk.isClose(part, from, clause) ? undefined : part;
}
