// Why: a figure shows its answer with its doubt, what went in and where that came from, how it was worked out and what was left out.

import { placeName } from '../../catalogue/place.ts';
import type { Figure } from '../../figured/figure.ts';
import type { Value } from '../../said/entry.ts';
import { sayEvidence } from '../words/say-evidence.ts';
import { sayGap } from '../words/say-gap.ts';
import { sayCitation } from '../words/say-limit.ts';
import { sayValue } from '../words/say-value.ts';

export interface FigureLine {
  readonly asks: string;
  readonly place: string;
  /** Empty for a gap. */
  readonly answer: string;
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
  given: 'given by hand',
};

function fromWords(given: Given): string {
  const first = given.fact?.evidence[0];
  const who = given.cites?.map((c) => c.source.title).join(', ');
  return [origins[given.from], first === undefined ? undefined : sayEvidence(first), who]
    .filter((w) => w !== undefined && w !== '')
    .join(', ');
}

/** The answer as shown: rounded as the card asks, never more than it knows. */
function shown(f: Figure, value: Value): string {
  if (value.is !== 'quantity' || f.card.round === undefined)
    return sayValue(value, f.card.gives.part, f.card.gives.aspect);
  const { plusOrMinus } = value;
  const rounded = f.card.round({
    value: value.value,
    unit: value.unit,
    ...(plusOrMinus === undefined ? {} : { plusOrMinus }),
  });
  return sayValue({ is: 'quantity', ...rounded }, f.card.gives.part, f.card.gives.aspect);
}

/** The words of a figure, worked out or not. */
export function figureLine(f: Figure): FigureLine {
  const worked = f.result.is === 'worked' ? f.result : undefined;
  const driver = f.drivenBy[0];
  const named = f.card.needs.find((n) => n.name === driver?.name)?.what;
  return {
    asks: f.card.asks,
    place: f.place === undefined ? '' : placeName(f.place),
    answer: worked === undefined ? '' : shown(f, worked.value),
    gap: sayGap(f),
    working: worked?.working ?? [],
    inputs: f.inputs.map(({ need, given }) => ({
      what: need.what,
      value: sayValue(given.value, given.fact?.part ?? need.part, given.fact?.aspect ?? need.aspect),
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
