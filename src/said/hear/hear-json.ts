// Why: what was heard as plain rows, for people and programs that read `hear --json`.
import { aspectOf, partOf } from '../../catalogue/index.ts';
import type { Heard, HeardObservation } from './heard.ts';
import { rowPlace } from './row-place.ts';

/** One row: seconds, plain names, UCUM unit, exact words. */
export interface HearRow {
  readonly at: number;
  readonly to: number;
  readonly part: string;
  readonly label: string;
  /** The exact words by which the part was named. */
  readonly item?: string;
  /** Where, and where that matters under what: "left rear inner", "over sink", "on LP". */
  readonly place?: string;
  /** The piece of the place that nobody said: the only one such a part has. */
  readonly placeAssumed?: string;
  readonly aspect: string;
  readonly kind: HeardObservation['sense'];
  readonly value?: number | string;
  readonly upTo?: number;
  readonly of?: number;
  readonly unit?: string;
  readonly polarity: HeardObservation['polarity'];
  readonly hedged: boolean;
  readonly saidBy?: string;
  readonly sure: number;
  readonly quote: string;
  readonly retracted?: true;
}

const shown = (o: HeardObservation): Pick<HearRow, 'value' | 'upTo' | 'unit' | 'of'> => {
  const v = o.value;
  switch (v.is) {
    case 'quantity':
      return {
        value: v.value,
        ...(v.upTo === undefined ? {} : { upTo: v.upTo }),
        ...(v.unit === '1' ? {} : { unit: v.unit }),
      };
    case 'count':
      return { value: v.count, ...(v.of === undefined ? {} : { of: v.of }) };
    case 'text':
      return { value: v.text };
    case 'state':
      return { value: v.state };
    case 'unknown':
      return {};
  }
};

/** Parts that show or bring out how something else does; what that is belongs in the label. */
const instruments: ReadonlySet<string> = new Set([
  'dash_gauges',
  'air_gauges',
  'road_test_drive',
  'electric_panel',
  'monitor_panel',
  'hour_meters',
]);
const labelOf = (o: HeardObservation): string => {
  const name = partOf(o.part)?.name ?? o.part;
  const aspect = instruments.has(o.part) ? aspectOf(o.part, o.aspect)?.name : undefined;
  return aspect === undefined ? name : `${name}: ${aspect}`;
};
function placed(o: HeardObservation): Pick<HearRow, 'place' | 'placeAssumed'> {
  const { place, assumed } = rowPlace(o);
  return {
    ...(place === undefined ? {} : { place }),
    ...(assumed === undefined ? {} : { placeAssumed: assumed }),
  };
}

/** The observations as rows, in order. One that a later one replaces, or that was taken back, says so. */
export function hearJson(heard: Heard): HearRow[] {
  const gone = new Set(heard.observations.flatMap((o) => o.corrects ?? []));
  const two = (n: number): number => Math.round(n * 100) / 100;
  return heard.observations.map((o, i) => ({
    at: two(o.start),
    to: two(o.end),
    part: o.part,
    label: labelOf(o),
    ...(o.named === undefined ? {} : { item: o.named }),
    ...placed(o),
    aspect: aspectOf(o.part, o.aspect)?.name ?? o.aspect,
    kind: o.sense,
    ...shown(o),
    polarity: o.polarity,
    hedged: o.hedged,
    ...(o.saidBy === undefined ? {} : { saidBy: o.saidBy }),
    sure: o.sure,
    quote: o.words,
    ...(gone.has(i) || o.retracted ? { retracted: true } : {}),
  }));
}
