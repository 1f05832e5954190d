// Why: unit.json: what stands on paper before anybody walks. A field that cannot be read costs no other field.
import { aspectOf } from '../../catalogue/index.ts';
import { vehicleKinds } from '../../catalogue/vehicle-kind.ts';
import type { EntryOf } from '../../said/entry.ts';
import { readDay } from '../../units/day.ts';
import { sayPaper } from '../words/say-account.ts';
import type { Draft } from './make-entries.ts';
import { type Fields, isFields, lineOfKey, readJsonObject } from './read-json.ts';
import { readSubject, readValue, senseOf, surenessOf } from './read-value.ts';
import { readInstant } from './read-when.ts';
import type { Reader, Reading } from './reading.ts';
import type { FileFault } from './walk-file.ts';

/** A paper may be wrong, and was not written by whoever walks (house default, no source). */
const sureOfPaper = 0.85;
type UnitFields = Partial<
  Omit<EntryOf<'unit'>, 'v' | 'id' | 'dealership' | 'unit' | 'at' | 'by' | 'device' | 'kind'>
>;

const text = (most: number) => (raw: unknown) =>
  typeof raw === 'string' && raw.trim() !== '' && raw.length <= most ? raw : undefined;
const yesNo = (raw: unknown) => (typeof raw === 'boolean' ? raw : undefined);
const kindOf = (raw: unknown) => vehicleKinds.find((k) => k === raw);
const yearOf = (raw: unknown) =>
  Number.isInteger(raw) && (raw as number) >= 1900 && (raw as number) <= 2100 ? (raw as number) : undefined;
const dayIn = (raw: unknown) => (typeof raw === 'string' ? readDay(raw) : undefined);
const money = (raw: unknown) =>
  typeof raw === 'number' && raw >= 0 && raw < 1e8 ? Math.round(raw * 100) : undefined;
const options = (raw: unknown) => {
  if (!isFields(raw)) return undefined;
  const kept = Object.entries(raw).filter(
    ([k, v]) => /^[a-z0-9][a-z0-9_.-]*$/.test(k) && k.length <= 80 && typeof v === 'boolean',
  );
  return kept.length === Object.keys(raw).length
    ? (Object.fromEntries(kept) as Record<string, boolean>)
    : undefined;
};

/** Key in the file -> field of the entry, how it is read, what it should have been. */
const fields: Readonly<Record<string, readonly [keyof UnitFields, (raw: unknown) => unknown, string]>> = {
  kind: ['vehicle', kindOf, vehicleKinds.join(', ')],
  stock: ['stock', text(80), 'a text of at most 80 characters'],
  name: ['name', text(400), 'a text'],
  maker: ['maker', text(120), 'a text'],
  model: ['model', text(120), 'a text'],
  year: ['year', yearOf, 'a year such as 2016'],
  arrived: ['arrived', dayIn, 'a day YYYY-MM-DD'],
  consigned: ['consigned', yesNo, 'true or false'],
  asking: ['askingCents', money, 'dollars as a number'],
  equipment: ['equipment', options, 'part ids with true or false'],
  invented: ['invented', yesNo, 'true or false'],
};
/** Read elsewhere: who walked, when, and what they call it. */
const walkKeys = ['on_paper', 'note', 'dealership'];
const walkFields: Readonly<Record<string, readonly [(raw: unknown) => string | undefined, string]>> = {
  walked: [
    (raw) => (typeof raw === 'string' ? readInstant(raw) : undefined),
    'when the walk began, as in 2026-05-04T10:15:00-05:00',
  ],
  by: [text(400), 'a text'],
  device: [text(400), 'a text'],
  title: [text(400), 'a text'],
};

export function readUnit({ file, text: whole, about }: Reader): Reading {
  const raw = readJsonObject(whole, file.name);
  const faults: FileFault[] = [];
  const wrong = (key: string, code: string, detail: string, value: unknown): void => {
    faults.push({
      file: file.name,
      line: lineOfKey(whole, key),
      code,
      raw: `${JSON.stringify(key)}: ${JSON.stringify(value)}`.slice(0, 2000),
      detail,
    });
  };
  const unit: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(raw)) {
    const field = Object.hasOwn(fields, key) ? fields[key] : undefined;
    if (!field) {
      const should = Object.hasOwn(walkFields, key) ? walkFields[key]! : undefined;
      if (should) {
        if (should[0](value) === undefined) wrong(key, 'unit-field', `${key}|${should[1]}`, value);
      } else if (!walkKeys.includes(key))
        wrong(key, 'unit-key', Object.keys(fields).concat('on_paper').join(', '), value);
      continue;
    }
    const read = field[1](value);
    if (read === undefined) wrong(key, 'unit-field', `${key}|${field[2]}`, value);
    else unit[field[0]] = read;
  }
  const drafts: Draft[] = [{ kind: 'unit', ...(unit as UnitFields) }];
  const paper = isFields(raw.on_paper) ? raw.on_paper : {};
  if (raw.on_paper !== undefined && !isFields(raw.on_paper))
    wrong('on_paper', 'unit-field', 'on_paper|an object of "part.aspect": value', raw.on_paper);
  for (const [key, value] of Object.entries(paper)) {
    const read = readPaper(key, value);
    if ('detail' in read) wrong(key, read.code, read.detail, value);
    else drafts.push(read);
  }
  return {
    drafts,
    faults,
    account: [sayPaper(file.name, Object.keys(unit).length, drafts.length - 1, faults.length)],
  };

  function readPaper(key: string, value: unknown): Draft | { code: string; detail: string } {
    const m = /^(?:([^.@]+)\.)?([^.@]+)(?:@(.+))?$/.exec(key);
    if (!m) return { code: 'unit-paper-key', detail: key };
    const part = m[1] ?? 'coach';
    const subject = readSubject(part, m[2]!, m[3]);
    if ('code' in subject) return subject;
    const given: Fields = isFields(value) ? value : { value };
    const said = 'unknown' in given ? 'unknown' : asWord(given.value);
    const aspect = aspectOf(subject.part, subject.aspect.id) ?? subject.aspect;
    const read = readValue(aspect, {
      ...(said === undefined ? {} : { value: said }),
      ...(typeof given.unit === 'string' ? { unit: given.unit } : {}),
      ...(typeof given.plus_or_minus === 'number' ? { plusOrMinus: String(given.plus_or_minus) } : {}),
      ...('unknown' in given ? { note: String(given.unknown) } : {}),
    });
    if ('code' in read) return read;
    return {
      kind: 'observation',
      walk: about.walk,
      part: subject.part,
      aspect: aspect.id,
      value: read,
      ...senseOf(aspect, read),
      hedged: false,
      sure: surenessOf(aspect, read, sureOfPaper),
      source: {
        from: 'document',
        media: file.media.id,
        title:
          typeof given.document === 'string' && given.document !== ''
            ? given.document.slice(0, 400)
            : file.name,
      },
      ...(subject.place === undefined ? {} : { place: subject.place }),
    };
  }
}

function asWord(value: unknown): string | undefined {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'string' || typeof value === 'number' ? String(value) : undefined;
}

/** What unit.json says of the walk itself, for whoever has to know it before anything is read. Empty when it cannot be read. */
export function readWalkFacts(whole: string): {
  readonly walked?: string;
  readonly by?: string;
  readonly device?: string;
  readonly title?: string;
  readonly stock?: string;
} {
  try {
    const raw = readJsonObject(whole, 'unit.json');
    const line = (key: string) => {
      const said = key === 'stock' ? text(80)(raw[key]) : walkFields[key]?.[0](raw[key]);
      return said === undefined ? {} : { [key]: said };
    };
    return { ...line('walked'), ...line('by'), ...line('device'), ...line('title'), ...line('stock') };
  } catch {
    return {};
  }
}
