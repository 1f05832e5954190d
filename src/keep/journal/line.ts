// Why: the format of one line of the journal, which is also the format of export and backup.
import { createHash } from 'node:crypto';
import type { Entry } from '../../said/entry.ts';
import type { Damage, Position } from '../log.ts';

/**
 * One line: {"n":7,"position":4,"after":"<sum of line 6>","sum":"<sum>","entry":{...}} and a line feed.
 * `n` counts lines of the journal, `position` entries of the dealership, both from 1. `sum` is the first 32 hex digits of
 * SHA-256 over n, position, after and the bytes of the entry, so a flipped bit anywhere is found, and `after` finds lines
 * that were lost, doubled or moved.
 */
export interface SoundLine {
  readonly n: number;
  readonly position: Position;
  readonly after: string;
  readonly sum: string;
  /** The entry's JSON, exactly as kept. */
  readonly text: string;
  readonly entry: Entry;
}

/** What the first line of a journal stands after. */
export const origin = '0'.repeat(32);

const head =
  /^\{"n":(\d{1,15}),"position":(\d{1,15}),"after":"([0-9a-f]{32})","sum":"([0-9a-f]{32})","entry":/;
const longestHead = 160;
const lineFeed = 10;
const closingBrace = 125;

function sumOf(n: string, position: string, after: string, entry: string | Uint8Array): string {
  return createHash('sha256').update(`${n} ${position} ${after} `).update(entry).digest('hex').slice(0, 32);
}

/** The line, with its line feed, and its sum. `text` is JSON without line breaks. */
export function writeLine(
  n: number,
  position: Position,
  after: string,
  text: string,
): { line: string; sum: string } {
  const sum = sumOf(String(n), String(position), after, text);
  return {
    line: `{"n":${n},"position":${position},"after":"${after}","sum":"${sum}","entry":${text}}\n`,
    sum,
  };
}

export type ReadLine =
  | { readonly sound: SoundLine }
  | { readonly code: Damage['code']; readonly detail: string };

/** Reads the bytes of one line (without its line feed): the line, or what is wrong with it. */
export function readLine(bytes: Buffer): ReadLine {
  const found = head.exec(bytes.toString('latin1', 0, longestHead));
  if (!found || bytes[bytes.length - 1] !== closingBrace)
    return { code: 'not-json', detail: 'is not laid out as a journal line' };
  const [start, n, position, after, sum] = found as unknown as [string, string, string, string, string];
  const body = bytes.subarray(start.length, -1);
  if (sumOf(n, position, after, body) !== sum)
    return { code: 'checksum', detail: `line ${n} does not give the sum written in it` };
  const text = body.toString('utf8');
  let entry: unknown;
  try {
    entry = JSON.parse(text);
  } catch {
    return { code: 'not-json', detail: `the entry of line ${n} is not JSON` };
  }
  if (!looksLikeEntry(entry)) return { code: 'not-an-entry', detail: `line ${n} holds no entry` };
  return { sound: { n: Number(n), position: Number(position), after, sum, text, entry } };
}

/** The envelope only: a newer edition's entry is not damage, and is kept. */
function looksLikeEntry(raw: unknown): raw is Entry {
  if (raw === null || typeof raw !== 'object') return false;
  const has = raw as Record<string, unknown>;
  return ['id', 'dealership', 'unit', 'at', 'kind'].every((key) => typeof has[key] === 'string');
}

/** One line's place in a file: bytes without the line feed; `ended` is false when the file stops before it. */
export interface RawLine {
  readonly bytes: Buffer;
  readonly offset: number;
  readonly ended: boolean;
}

/** Cuts a file's bytes into lines. */
export function* cutLines(bytes: Buffer): Generator<RawLine> {
  let offset = 0;
  while (offset < bytes.length) {
    const end = bytes.indexOf(lineFeed, offset);
    if (end < 0) {
      yield { bytes: bytes.subarray(offset), offset, ended: false };
      return;
    }
    yield { bytes: bytes.subarray(offset, end), offset, ended: true };
    offset = end + 1;
  }
}
