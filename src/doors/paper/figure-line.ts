// Why: a figure shows its answer with its doubt, what went in and where that came from, how it was worked out and what was left out.

import { placeName } from '../../catalogue/place.ts';
import { type VehicleKind, vehicleKindNames } from '../../catalogue/vehicle-kind.ts';
import type { Figure, Need } from '../../figured/figure.ts';
import { shownValue } from '../../figured/shown-value.ts';
import { sayEvidence } from '../words/say-evidence.ts';
import { sayGap } from '../words/say-gap.ts';
import { sayCitation } from '../words/say-limit.ts';
import { sayValue } from '../words/say-value.ts';

export interface FigureLine {
  readonly asks: string;
  readonly place: string;
  /** Empty for a gap. */
  readonly answer: string;
  /** Where the same question was answered at several places: each answer, and what it came from. Empty for one. */
  readonly places: readonly { readonly place: string; readonly answer: string; readonly from: string }[];
  /** Empty for a figure that was worked out. */
  readonly gap: string;
  readonly working: readonly string[];
  readonly inputs: readonly { readonly what: string; readonly value: string; readonly from: string }[];
  readonly formula: string;
  readonly cites: readonly string[];
  readonly neglects: string;
  readonly note: string;
  /** "Surest by measuring again: wheelbase (62 %)". */
  readonly surer: string;
}

type Given = Figure['inputs'][number]['given'];

const origins: Readonly<Record<Given['from'], string>> = {
  seen: 'seen',
  figured: 'worked out',
  plate: "the unit's own plate",
  default: 'assumed',
  given: 'as the unit is kept',
};

function fromWords(given: Given): string {
  const first = given.fact?.evidence[0];
  const who = given.cites?.map((c) => c.source.title).join(', ');
  return [origins[given.from], first === undefined ? undefined : sayEvidence(first), who]
    .filter((w) => w !== undefined && w !== '')
    .join(', ');
}

/** A kind of vehicle is kept under a code; everything else is worded as anywhere. */
function givenWords(given: Given, need: Need): string {
  const { value, fact } = given;
  if (value.is === 'text' && Object.hasOwn(vehicleKindNames, value.text))
    return vehicleKindNames[value.text as VehicleKind];
  return sayValue(value, fact?.part ?? need.part, fact?.aspect ?? need.aspect);
}

/** The answer with its doubt, rounded to the careful side. Empty for a gap. */
function answerOf(f: Figure): string {
  const value = shownValue(f);
  return value === undefined ? '' : sayValue(value, f.card.gives.part, f.card.gives.aspect);
}

/** The words of the same figure at one place or several. */
export function figureLines(figures: readonly Figure[]): readonly FigureLine[] {
  const groups = new Map<string, [Figure, ...Figure[]]>();
  for (const f of figures) {
    const key = `${f.id}|${f.result.is === 'worked' ? 'worked' : sayGap({ result: f.result })}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [f]);
    else group.push(f);
  }
  return [...groups.values()].map((group) => {
    const line = figureLine(group[0]);
    const names = group.flatMap((f) => (f.place === undefined ? [] : [placeName(f.place)]));
    if (group.length === 1) return line;
    if (line.gap !== '')
      return { ...line, place: names.join(', '), gap: sayGap({ result: group[0].result }) };
    return {
      ...line,
      place: '',
      answer: `${group.length} places`,
      places: group.map((f) => ({
        place: f.place === undefined ? '' : placeName(f.place),
        answer: answerOf(f),
        from: figureLine(f)
          .inputs.map((i) => `${i.what} ${i.value}${i.from === '' ? '' : `, ${i.from}`}`)
          .join('; '),
      })),
    };
  });
}

/** The words of a figure, worked out or not. */
function figureLine(f: Figure): FigureLine {
  const worked = f.result.is === 'worked' ? f.result : undefined;
  const driver = f.drivenBy[0];
  const named = f.card.needs.find((n) => n.name === driver?.name)?.what;
  return {
    asks: f.card.asks,
    place: f.place === undefined ? '' : placeName(f.place),
    answer: answerOf(f),
    places: [],
    gap: sayGap(f),
    working: worked?.working ?? [],
    inputs: f.inputs.map(({ need, given }) => ({
      what: need.what,
      value: givenWords(given, need),
      from: fromWords(given),
    })),
    formula: f.card.formula,
    cites: [...new Set(f.card.cites.map(sayCitation))],
    neglects: f.card.neglects,
    note: [worked?.note, worked?.binds === undefined ? undefined : `What binds: ${worked.binds}.`]
      .filter((t) => t !== undefined)
      .join(' '),
    surer:
      driver === undefined || driver.share < 0.3 || named === undefined
        ? ''
        : `Most of the doubt comes from: ${named} (${Math.round(driver.share * 100)} %).`,
  };
}
