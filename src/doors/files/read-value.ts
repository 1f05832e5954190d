// Why: a reading as typed (a number and a unit, a word, or unknown) becomes a value of the log, or a fault that says what to write.
import { aspectOf, otherNames, partOf, parts } from '../../catalogue/index.ts';
import type { Aspect } from '../../catalogue/part.ts';
import { isPlace } from '../../catalogue/place.ts';
import { isState, states } from '../../catalogue/state.ts';
import type { Observation, Value } from '../../said/entry.ts';
import { isSameDimension } from '../../units/quantity.ts';
import { isUnit } from '../../units/unit.ts';
import { nearest } from './nearest.ts';

export interface Wrong {
  readonly code: string;
  readonly detail: string;
}
export interface Subject {
  readonly part: string;
  readonly place?: string;
  readonly aspect: Aspect;
}
/** Cells of a reading, as text. */
export interface Cells {
  readonly value?: string;
  readonly unit?: string;
  readonly plusOrMinus?: string;
  readonly note?: string;
}

const number = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;

const partIds = parts.map((p) => p.id);

/** Which part, place and aspect are meant. `suggests`: whether a misspelt part is told with the nearest one, which takes its time. Names of one corner ("tire_lf") are read as the part with its place. */
export function readSubject(
  partText: string,
  aspectText: string,
  placeText: string | undefined,
  suggests = true,
): Subject | Wrong {
  const name = partText.toLowerCase();
  const other = otherNames[name];
  const part = other?.part ?? name;
  if (!partOf(part))
    return {
      code: 'part-unknown',
      detail: `${partText}|${suggests ? nearest(name, partIds) : ''}`,
    };
  const place = other?.place ?? (placeText ? placeText.toLowerCase().replace(/[\s_]+/g, '-') : undefined);
  if (place !== undefined && !isPlace(place))
    return { code: 'place-unknown', detail: `${placeText}|${(partOf(part)?.places ?? []).join(', ')}` };
  const aspect =
    aspectOf(part, aspectText) ??
    partOf(part)?.aspects.find((a) => a.id.toLowerCase() === aspectText.toLowerCase());
  if (!aspect)
    return {
      code: 'aspect-unknown',
      detail: `${aspectText}|${(partOf(part)?.aspects ?? []).map((a) => a.id).join(', ')}`,
    };
  return { part, aspect, ...(place === undefined ? {} : { place }) };
}

/** The value that the cells hold for an aspect. */
export function readValue(aspect: Aspect, cells: Cells): Value | Wrong {
  const said = cells.value?.trim() ?? '';
  if (said === '') return { code: 'value-missing', detail: '' };
  if (said.toLowerCase() === 'unknown')
    return { is: 'unknown', why: (cells.note || 'no reason given').slice(0, 400) };
  const isWords = ['words', 'vin', 'date-code', 'year', 'date', 'money'].includes(aspect.kind);
  if (isWords && !cells.unit) return { is: 'text', text: said.slice(0, 2000) };
  const range = /^(\S+)\.\.(\S+)$/.exec(said);
  const first = range?.[1] ?? said;
  if (number.test(first) && (!range || number.test(range[2]!))) {
    const ends = range ? [Number(first), Number(range[2])].sort((a, b) => a - b) : [Number(first)];
    return readNumber(aspect, ends[0]!, ends[1], cells);
  }
  const counted = /^(\d{1,9}) ?(?:\/|of) ?(\d{1,9})$/.exec(said);
  if (counted && aspect.kind === 'count')
    return { is: 'count', count: Number(counted[1]), of: Number(counted[2]) };
  const word = said.toLowerCase();
  if (aspect.kind === 'choice') {
    const meant = aspect.of?.find((w) => w.toLowerCase() === word);
    return meant !== undefined
      ? { is: 'text', text: meant }
      : { code: 'word-unknown', detail: `${said}|${(aspect.of ?? []).join(', ')}` };
  }
  if (isState(word)) return { is: 'state', state: word };
  if (aspect.kind === 'quantity' || aspect.kind === 'count') return { code: 'not-a-number', detail: said };
  if (aspect.kind === 'yes-no')
    return { code: 'word-unknown', detail: `${said}|yes, no, ${nearest(word, Object.keys(states))}` };
  return { is: 'text', text: said.slice(0, 2000) };
}

function readNumber(aspect: Aspect, value: number, upTo: number | undefined, cells: Cells): Value | Wrong {
  const wantsUnit = aspect.kind === 'quantity';
  if (!Number.isFinite(value) || (upTo !== undefined && !Number.isFinite(upTo))) {
    return { code: 'not-a-number', detail: cells.value ?? '' };
  }
  if (aspect.kind === 'count' && !cells.unit) {
    if (!Number.isSafeInteger(value) || value < 0) return { code: 'not-a-count', detail: cells.value ?? '' };
    return { is: 'count', count: value };
  }
  const unit = cells.unit || (aspect.unit === '1' || !wantsUnit ? '1' : '');
  if (unit === '') return { code: 'unit-missing', detail: aspect.unit ?? '' };
  if (!isUnit(unit)) return { code: 'unit-unknown', detail: `${unit}|${aspect.unit ?? ''}` };
  if (aspect.unit && !isSameDimension(unit, aspect.unit))
    return { code: 'unit-dimension', detail: `${unit}|${aspect.unit}` };
  const doubt = cells.plusOrMinus?.replace(/^(±|\+\/-)\s*/, '');
  if (doubt && !(number.test(doubt) && Number(doubt) >= 0 && Number.isFinite(Number(doubt))))
    return { code: 'plus-or-minus-bad', detail: doubt };
  return {
    is: 'quantity',
    value,
    unit,
    ...(doubt ? { plusOrMinus: Number(doubt) } : {}),
    ...(upTo === undefined ? {} : { upTo }),
  };
}

/** Whether a value is a reading, an identity, good or bad news of its aspect. */
export function senseOf(aspect: Aspect, value: Value): Pick<Observation, 'sense' | 'polarity'> {
  if (value.is === 'unknown') return { sense: 'unknown', polarity: 'neutral' };
  if (value.is === 'quantity' || value.is === 'count') return { sense: 'quantity', polarity: 'neutral' };
  if (value.is === 'text') {
    if (aspect.kind === 'condition' || aspect.kind === 'choice')
      return { sense: 'condition', polarity: 'neutral' };
    return { sense: 'identity', polarity: 'neutral' };
  }
  const word = value.state;
  if (word === 'yes' || word === 'no') {
    const polarity = aspect.good === undefined ? 'neutral' : aspect.good === word ? 'good' : 'bad';
    if (aspect.id === 'present') return { sense: word === 'yes' ? 'condition' : 'absent', polarity };
    if (aspect.good === 'no') return { sense: word === 'no' ? 'absent' : 'defect', polarity };
    return { sense: 'operates', polarity };
  }
  const polarity = isState(word) ? states[word] : 'neutral';
  if (word === 'absent' || word === 'missing') return { sense: 'absent', polarity };
  return {
    sense: polarity === 'bad' ? 'defect' : aspect.id === 'operates' ? 'operates' : 'condition',
    polarity,
  };
}

/** How sure a reading is: less where the catalogue says that such a number is hardly believable. */
export function surenessOf(aspect: Aspect, value: Value, usual: number): number {
  if (value.is !== 'quantity' || !aspect.within || value.unit !== aspect.unit) return usual;
  return value.value < aspect.within[0] || value.value > aspect.within[1] ? Math.min(usual, 0.5) : usual;
}
