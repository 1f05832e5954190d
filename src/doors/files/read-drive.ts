// Why: drive.gpx: how far, how long, how fast and how hard it was braked, from the satellite fixes of a road test.
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import type { Value } from '../../said/entry.ts';
import { convert } from '../../units/quantity.ts';
import { sayDrive } from '../words/say-account.ts';
import type { Draft } from './make-entries.ts';
import { type Fix, measureDrive } from './measure-drive.ts';
import { readInstant } from './read-when.ts';
import type { Reader, Reading } from './reading.ts';
import { type FileFault, FileRefusal } from './walk-file.ts';

const sureOfInstrument = 0.9;
const asList = (raw: unknown): readonly unknown[] =>
  Array.isArray(raw) ? raw : raw === undefined || raw === null || raw === '' ? [] : [raw];
const inside = (raw: unknown, key: string): unknown =>
  typeof raw === 'object' && raw !== null && Object.hasOwn(raw, key)
    ? (raw as Record<string, unknown>)[key]
    : undefined;

/** A plain decimal number: an empty place is not at zero degrees, and "0x10" is nowhere. */
const numberIn = (raw: unknown): number =>
  typeof raw === 'string' && /^[+-]?\d+(\.\d*)?$/.test(raw.trim()) ? Number(raw) : Number.NaN;

/** GPX 1.0 or 1.1, tracks only. A document type is refused: nothing in a drive log needs one, and entities can be a bomb. */
export function readDrive({ file, text, about }: Reader): Reading {
  if (/<!DOCTYPE|<!ENTITY/i.test(text))
    throw new FileRefusal({ file: file.name, line: 0, code: 'xml-doctype', raw: text.slice(0, 400) });
  const faults: FileFault[] = [];
  const checked = XMLValidator.validate(text);
  if (checked !== true) {
    const line = Math.max(0, checked.err.line);
    faults.push({
      file: file.name,
      line,
      code: 'xml-broken',
      raw: (text.split('\n')[line - 1] ?? '').slice(0, 400),
      detail: checked.err.msg.slice(0, 160).replaceAll('|', '/'),
    });
  }
  const { fixes, bad, firstBad } = readFixes(checked === true ? text : soundPart(text));
  if (bad > 0)
    faults.push({
      file: file.name,
      line: 0,
      code: 'gpx-points',
      raw: firstBad.slice(0, 400),
      detail: String(bad),
    });
  if (fixes.length < 2) {
    faults.push({
      file: file.name,
      line: 0,
      code: 'gpx-empty',
      raw: text.slice(0, 400),
      detail: String(fixes.length),
    });
    return { drafts: [], faults, account: [] };
  }
  const drive = measureDrive(fixes);
  const drafts: Draft[] = [];
  const add = (aspect: string, value: Extract<Value, { is: 'quantity' }>, note: string): void => {
    drafts.push({
      kind: 'observation',
      walk: about.walk,
      part: 'road_test_drive',
      aspect,
      value,
      sense: 'quantity',
      polarity: 'neutral',
      hedged: false,
      sure: sureOfInstrument,
      source: { from: 'instrument', media: file.media.id, note },
      at: fixes[0]!.time,
    });
  };
  const round = (n: number, step: number): number => Number((Math.round(n / step) * step).toFixed(6));
  const miles = (m: number): number => convert(m, 'm', '[mi_i]');
  const mph = (v: number): number => convert(v, 'm/s', '[mi_i]/h');
  add(
    'miles',
    {
      is: 'quantity',
      value: round(miles(drive.meters), 0.01),
      unit: '[mi_i]',
      plusOrMinus: round(miles(drive.metersDoubt), 0.01),
    },
    drive.notes.distance,
  );
  add(
    'duration',
    {
      is: 'quantity',
      value: round(drive.seconds / 60, 0.01),
      unit: 'min',
      plusOrMinus: round(drive.secondsDoubt / 60, 0.01),
    },
    drive.notes.duration,
  );
  if (drive.top)
    add(
      'top_speed',
      {
        is: 'quantity',
        value: round(mph(drive.top.value), 0.1),
        unit: '[mi_i]/h',
        plusOrMinus: round(mph(drive.top.doubt), 0.1),
      },
      drive.notes.speed,
    );
  if (drive.braking)
    add(
      'hardest_braking',
      {
        is: 'quantity',
        value: round(drive.braking.value, 0.01),
        unit: 'm/s2',
        plusOrMinus: round(drive.braking.doubt, 0.01),
      },
      drive.notes.braking,
    );
  return { drafts, faults, account: [sayDrive(file.name, fixes.length, drafts.length, faults.length)] };
}

/** A track that breaks off: all up to the last whole point. */
const soundPart = (text: string): string => {
  const last = text.lastIndexOf('</trkpt>');
  return last < 0 ? text : text.slice(0, last + '</trkpt>'.length);
};

/** Every track point with a place and a time, in the order of the file; how many had none or went back in time. */
function readFixes(text: string): { fixes: readonly Fix[]; bad: number; firstBad: string } {
  let raw: unknown;
  try {
    raw = new XMLParser({
      ignoreAttributes: false,
      attributeNamePrefix: '',
      processEntities: false,
      parseTagValue: false,
      parseAttributeValue: false,
      removeNSPrefix: true,
      isArray: (name) => ['trk', 'trkseg', 'trkpt'].includes(name),
    }).parse(text);
  } catch {
    return { fixes: [], bad: 0, firstBad: '' };
  }
  const fixes: Fix[] = [];
  let bad = 0;
  let firstBad = '';
  let segment = 0;
  for (const track of asList(inside(inside(raw, 'gpx'), 'trk'))) {
    for (const part of asList(inside(track, 'trkseg'))) {
      segment++;
      for (const point of asList(inside(part, 'trkpt'))) {
        const lat = numberIn(inside(point, 'lat'));
        const lon = numberIn(inside(point, 'lon'));
        const time = readInstant(String(inside(point, 'time') ?? '').trim()) ?? '';
        const speed = numberIn(inside(point, 'speed') ?? inside(inside(point, 'extensions'), 'speed'));
        const seconds = time === '' ? Number.NaN : Date.parse(time) / 1000;
        const isGood =
          Math.abs(lat) <= 90 &&
          Math.abs(lon) <= 180 &&
          seconds > (fixes.at(-1)?.seconds ?? Number.NEGATIVE_INFINITY);
        if (!isGood) {
          bad++;
          firstBad ||= JSON.stringify(point) ?? '';
          continue;
        }
        fixes.push({ lat, lon, time, seconds, segment, ...(speed >= 0 && speed < 100 ? { speed } : {}) });
      }
    }
  }
  return { fixes, bad, firstBad };
}
