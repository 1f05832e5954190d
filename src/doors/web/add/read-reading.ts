// Why: a reading is typed as it is spoken, number and unit together, and refused with its reason when it is another kind of thing.

import { plainQuantity } from '../../../published/plain-value.ts';
import { convert, isSameDimension } from '../../../units/quantity.ts';
import { type Unit, unitFact } from '../../../units/unit.ts';
import { measures, unitNamed } from './unit-names.ts';

/** A reading as read: numbers in `unit`; `plusOrMinus` is a half width in the same unit. */
export interface Reading {
  readonly value: number;
  readonly upTo?: number;
  readonly unit: Unit;
  readonly plusOrMinus?: number;
}

type Read = { readonly reading: Reading } | { readonly trouble: string };

const oneNumber =
  /^(?:(\d+)[ -](\d+)\/(\d+)|(\d+(?:\.\d+)?)\/(\d+)|([+-]?(?:\d{1,3}(?:,\d{3})+|\d+)?(?:\.\d*)?(?:e[+-]?\d+)?)(?:\s{0,1}(k(?![a-z])))?)/i;

interface Amount {
  readonly value: number;
  /** Thirty-seconds written as a fraction are a unit of their own where a length is asked for. */
  readonly over32?: number;
  readonly thousands: boolean;
  readonly rest: string;
}

/** The number a text begins with: "13.5k", "9/32", "1 1/2", "61,480". */
function amountOf(text: string, own: Unit): Amount | undefined {
  // Of a temperature a K is kelvin, not thousands.
  const found = oneNumber.exec(
    unitFact(own).dimension.startsWith('temperature') ? text.replace(/\s*k/i, '  K') : text,
  );
  if (!found?.[0] || !/\d/.test(found[0])) return undefined;
  const [all, whole, top, bottom, over, under, plain, thousand] = found;
  const rest = found.input.slice(all.length).trim();
  if (bottom !== undefined || under !== undefined) {
    const below = Number(bottom ?? under);
    const above = Number(top ?? over);
    if (below === 0) return undefined;
    const value = Number(whole ?? 0) + above / below;
    return { value, rest, thousands: false, ...(under === '32' ? { over32: above } : {}) };
  }
  const value = Number(plain?.replaceAll(',', '')) + 0;
  return Number.isFinite(value) ? { value, rest, thousands: thousand !== undefined } : undefined;
}

/** Feet and inches written together, in feet: 7'2", 38 ft 2 in. */
function feetAndInches(text: string): number | undefined {
  const found = /^(\d+(?:\.\d+)?)\s*(?:'|ft|feet|foot)\s*(\d+(?:\.\d+)?)\s*(?:"|in|inch|inches)?$/i.exec(
    text,
  );
  return found ? Number(found[1]) + Number(found[2]) / 12 : undefined;
}

/** The two ends of a range; "1-1/2" is one number and a half. */
function endsOf(text: string): readonly [string, string | undefined] {
  const found =
    /^(.+?)\s*(?:\bto\b|–|—|\.\.)\s*(.+)$/i.exec(text) ?? /^(\d[\d.,]*)\s*-\s*(\d(?!\d*\/).*)$/.exec(text);
  return [found?.[1] ?? text, found?.[2]];
}

/**
 * Reads what is typed for a reading.
 * @param own the unit the aspect is kept in; its dimension is what is asked for
 * @param meant the unit a bare number stands in
 * @param name what the reading is of, for the sentence of a refusal
 */
export function readReading(typed: string, own: Unit, meant: Unit, name: string): Read {
  const said = typed.trim();
  const [main = '', doubt, ...more] = said.split(/\s*(?:±|\+\/-|\+-|\bplus or minus\b)\s*/i);
  if (more.length > 0) return { trouble: `“${said}” has more than one plus-or-minus.` };
  const isLength = unitFact(own).dimension === 'length';
  const feet = isLength ? feetAndInches(main) : undefined;
  if (feet !== undefined) return withDoubt({ value: feet, unit: '[ft_i]' }, doubt, own, name);
  const [from, to] = endsOf(main);
  const first = amountOf(from, own);
  const second = to === undefined ? undefined : amountOf(to, own);
  if (!first || (to !== undefined && !second))
    return {
      trouble: `“${said}” is not a number. Write 12.6, 9/32, 13.5k, or a range as 5 to 6; a unit may follow.`,
    };
  const named = (second?.rest || first.rest).trim();
  if (isLength && /^(|in|inch|inches|"|of an inch)\.?$/i.test(named)) {
    const b = second?.over32;
    const a = first.over32 ?? (b === undefined ? undefined : first.value);
    if (a !== undefined && (!second || b !== undefined))
      return withDoubt(ranged(a, b, '[in_i]/32'), doubt, own, name);
  }
  const isFraction = meant === '[in_i]/32' && first.value < 1 && !Number.isInteger(first.value);
  const unit = named === '' ? (isFraction ? '[in_i]' : meant) : unitNamed(named, unitFact(own).dimension);
  if (unit === undefined)
    return { trouble: `“${named}” is no unit that is known here. ${inWhat(own, name)}` };
  if (!isSameDimension(unit, own)) return { trouble: `“${said}” is ${measures(unit)}. ${inWhat(own, name)}` };
  const times = (a: Amount): number => (a.thousands || second?.thousands ? 1000 : 1);
  return withDoubt(
    ranged(first.value * times(first), second && second.value * times(second), unit),
    doubt,
    own,
    name,
  );
}

function ranged(a: number, b: number | undefined, unit: Unit): Reading {
  if (b === undefined) return { value: a, unit };
  return { value: Math.min(a, b), upTo: Math.max(a, b), unit };
}

function withDoubt(r: Reading, doubt: string | undefined, own: Unit, name: string): Read {
  if (doubt === undefined || doubt === '') return { reading: r };
  const amount = amountOf(doubt, own);
  if (!amount || amount.value < 0)
    return { trouble: `“${doubt}” cannot be a plus or minus: write a number, not below zero.` };
  if (amount.over32 !== undefined && r.unit === '[in_i]/32')
    return { reading: { ...r, plusOrMinus: amount.over32 } };
  const unit = amount.rest === '' ? r.unit : unitNamed(amount.rest, unitFact(own).dimension);
  if (unit === undefined || !isSameDimension(unit, r.unit))
    return { trouble: `The plus or minus of ${name} must be in the unit of the reading.` };
  const size = (amount.value * unitFact(unit).factor) / unitFact(r.unit).factor;
  return { reading: { ...r, plusOrMinus: size } };
}

/** "tread mid is a length: write it in /32 in, in or mm." */
function inWhat(own: Unit, name: string): string {
  const few = [own, ...(friendly[unitFact(own).dimension] ?? [])].filter((u, i, all) => all.indexOf(u) === i);
  const symbols = few.map((u) => unitFact(u).symbol || 'a plain number');
  const last = symbols.pop();
  const said = symbols.length > 0 ? `${symbols.join(', ')} or ${last}` : last;
  const asked = `${name.charAt(0).toUpperCase()}${name.slice(1)} is ${measures(own)}`;
  return `${asked}: write it in ${said}, or choose another thing to say of the part.`;
}

/** Units worth showing a reading in as well, by dimension. */
const friendly: Readonly<Record<string, readonly Unit[]>> = {
  length: ['[in_i]/32', '[in_i]', '[ft_i]', 'mm', 'm', '[mi_i]', 'km'],
  area: ['[ft_i]2', 'm2'],
  volume: ['[gal_us]', 'L'],
  mass: ['[lb_av]', 'kg'],
  pressure: ['[psi]', 'kPa', 'bar', "[in_i'H2O]"],
  temperature: ['[degF]', 'Cel'],
  'temperature-difference': ['[degF]{difference}', 'K{difference}'],
  time: ['s', 'min', 'h', 'd', 'mo', 'a'],
  speed: ['[mi_i]/h', 'km/h'],
  power: ['W', 'kW', '[HP]', '[Btu]/h'],
  energy: ['W.h', 'kW.h', '[Btu]'],
  torque: ['[lbf_av].[ft_i]', 'N.m'],
  voltage: ['V', 'mV'],
  flow: ['[gal_us]/min', '[gal_us]/h'],
  density: ['[lb_av]/[gal_us]', 'g/mL'],
};

const handy = (n: number, unit: Unit): boolean =>
  n === 0 || (Math.abs(n) >= 0.1 && Math.abs(n) < (unit === '[in_i]/32' ? 64 : 20_000));

/** The same reading in at most three other units in which its number is handy: "7.14 mm". */
export function conversionsOf(r: Reading): readonly string[] {
  return (friendly[unitFact(r.unit).dimension] ?? [])
    .filter((u) => u !== r.unit)
    .map((u) => ({ u, value: convert(r.value, r.unit, u) }))
    .filter(({ u, value }) => handy(value, u))
    .slice(0, 3)
    .map(({ u, value }) =>
      plainQuantity(
        value,
        u,
        r.plusOrMinus === undefined
          ? undefined
          : (r.plusOrMinus * unitFact(r.unit).factor) / unitFact(u).factor,
        r.upTo === undefined ? undefined : convert(r.upTo, r.unit, u),
      ),
    );
}
