// Why: hearing works on one stream of words, each with its second, because cues split sentences anywhere.

import type { Cue } from '../entry.ts';
import { spelled } from './spelling.ts';

/** What stands after a word: nothing, a comma or the like, or the end of a sentence. */
export type Stop = 0 | 1 | 2;

/** One word of the stream. A written word like "six-volt" or "that's" becomes two; they share `written`. */
export interface Word {
  /** Lower case, without punctuation: what everything is compared with. */
  readonly norm: string;
  /** Index into the list of written words, whose exact text is quoted. */
  readonly written: number;
  readonly start: number;
  readonly end: number;
  readonly cue: number;
  readonly stop: Stop;
  /** Began with a capital letter. */
  readonly capital: boolean;
  /** Ends with a question mark. */
  readonly asks?: true;
  /** Seconds of silence before it. */
  readonly pause: number;
}

/** The words of a recording, and the written words they came from. */
export interface Words {
  readonly words: readonly Word[];
  readonly written: readonly string[];
  /** Start and end of the cue each written word stands in. */
  readonly cues: readonly Cue[];
}

const clitic = /^(.+?)('s|'re|'ve|'ll|'d|'m)$/;
const letters = /^[a-z]$/;
const acronyms = new Set(
  (
    'psi lp co tpo epdm pvc agm led gfci gfi vin cca def tv ac rv rpm mph btu abs usb tpms dpf ecm bms ats ems mpg kw kva ' +
    'cb hd gps lro lri rro rri srs obd jb scr dtc fl lf rf lr rr gvwr gcwr occc gawr ccc hvac cac ats ph gph gpm cfm dc am pm mcd'
  ).split(' '),
);

/** Written without their apostrophe, and no other word. */
const run: Readonly<Record<string, string>> = Object.assign(
  Object.create(null),
  Object.fromEntries(
    "don't doesn't didn't won't can't couldn't wouldn't isn't aren't wasn't weren't hasn't haven't hadn't ain't shouldn't that's there's what's here's he's she's they're you're you've we've i've i'm they've you'll they'll it'll that'll where's who's everything's nobody's somebody's"
      .split(' ')
      .map((w) => [w.replace("'", ''), w]),
  ),
);

/** Splits a written word into its spoken pieces, lower case and bare. */
export function piecesOf(written: string): string[] {
  const low = written
    .toLowerCase()
    .replace(/[‘’ʼ]/g, "'")
    .replace(/[“”"()[\]{}*_]/g, '')
    .replace(/^[^a-z0-9$#.+\-\u00bc-\u00be\u00e0-\u024f]+/, '')
    .replace(/[^a-z0-9%°'\u00bc-\u00be\u00e0-\u024f]+$/, '');
  if (low === '') return [];
  if (/^a\/cs?(?:'s)?$/.test(low)) return low === 'a/c' ? ['ac'] : low === "a/c's" ? ['ac', "'s"] : ['acs'];
  if (/^(?:[a-z]\.)+[a-z]?$/.test(low) || /^[a-z](?:\.[a-z])+$/.test(low)) return [low.replaceAll('.', '')];
  const money = low.startsWith('$') ? ['$'] : [];
  const bare = low.replace(/^\$/, '');
  if (/^-?\d/.test(bare)) return [...money, ...numeric(bare)];
  const out: string[] = [];
  for (const piece of bare.split(/[-–—/]+/)) {
    const plain = piece.replace(/^\.+|\.+$/g, '');
    const half = run[plain] ?? plain;
    const m = clitic.exec(half);
    if (m?.[1] && m[2]) out.push(m[1], m[2]);
    else if (half !== '' && half !== "'") out.push(half.replace(/^'|'$/g, ''));
  }
  return [...money, ...out.filter((p) => p !== '').map(spelled)];
}

/** "12.7v" -> 12.7, v; "41b" -> 41, b; "3/4" stays one; "6-volt" -> 6, volt; "10k" -> 10, k; "2-1/2" -> 2, 1/2. */
function numeric(text: string): string[] {
  const height = /^(\d+)'(\d+)"?$/.exec(text);
  if (height?.[1] && height[2]) return [height[1], 'feet', height[2], 'inches'];
  const m = /^(-?\d[\d,]*(?:\.\d+)?(?:\/\d+)?)(.*)$/.exec(text);
  if (!m) return [text];
  const number = (m[1] ?? '').replace(/,(?=\d{3}\b)/g, '').replace(/,.*$/, '');
  const rest = (m[2] ?? '').replace(/^[-–—/'’"]+/, '');
  if (/^(?:st|nd|rd|th)$/.test(m[2] ?? '')) return [text];
  if (/^(?:"|”|'|’)/.test(m[2] ?? '') && rest === '')
    return [number, (m[2] ?? '').startsWith("'") ? 'feet' : 'inches'];
  if (/^:\d\d/.test(m[2] ?? '')) return [text];
  return rest === '' ? [number] : [number, ...(/^\d/.test(rest) ? numeric(rest) : piecesOf(rest))];
}

/** Joins single letters said one by one into one word: T P O -> tpo. */
function joinLetters(words: Word[]): Word[] {
  const out: Word[] = [];
  for (let i = 0; i < words.length; ) {
    const w = words[i] as Word;
    let j = i;
    if (letters.test(w.norm)) {
      while (
        j < words.length &&
        j - i < 5 &&
        letters.test((words[j] as Word).norm) &&
        (j === i || (words[j - 1] as Word).stop === 0)
      )
        j++;
      while (j - i >= 2) {
        const run = words.slice(i, j);
        const said = run.map((x) => x.norm).join('');
        // "T V I never tried": the last letter is a word of its own
        const talks = run.at(-1)?.norm === 'i' && acronyms.has(said.slice(0, -1));
        if (acronyms.has(said) || (j - i >= 3 && run.every((x) => x.capital) && !talks)) break;
        j--;
      }
    }
    if (j - i >= 2) {
      const last = words[j - 1] as Word;
      out.push({
        ...w,
        norm: words
          .slice(i, j)
          .map((x) => x.norm)
          .join(''),
        end: last.end,
        stop: last.stop,
        ...(last.asks ? { asks: true as const } : {}),
      });
      i = j;
    } else {
      out.push(w);
      i++;
    }
  }
  return out;
}

/** The norms of a phrase as the stream would hold them. */
export function normsOf(phrase: string): string[] {
  const flat = phrase.split(/\s+/).flatMap(piecesOf);
  const out: string[] = [];
  for (let i = 0; i < flat.length; ) {
    let j = i;
    while (j < flat.length && letters.test(flat[j] ?? '')) j++;
    const said = flat.slice(i, j).join('');
    if (j - i >= 2 && acronyms.has(said)) out.push(said);
    else if (j > i) out.push(...flat.slice(i, j));
    else out.push(flat[j++] ?? '');
    i = j;
  }
  return out;
}

/** The stream of words of a recording; inside a cue time runs evenly over the letters. */
export function wordsOf(cues: readonly Cue[]): Words {
  const written: string[] = [];
  const words: Word[] = [];
  let before = 0;
  cues.forEach((cue, c) => {
    const tokens = cue.text.split(/\s+/).filter((t) => t !== '');
    const total = tokens.reduce((n, t) => n + t.length + 1, 0) || 1;
    const span = Math.max(0, cue.end - cue.start);
    let gone = 0;
    tokens.forEach((token, t) => {
      const start = cue.start + (span * gone) / total;
      gone += token.length + 1;
      const end = cue.start + (span * gone) / total;
      const index = written.push(token) - 1;
      const pieces = piecesOf(token);
      const stop: Stop = /[.!?…]["”')\]]*$/.test(token) ? 2 : /[,;:–—-]["”')\]]*$/.test(token) ? 1 : 0;
      if (pieces.length === 0 && words.length > 0 && stop > 0) {
        const last = words.at(-1) as Word;
        words[words.length - 1] = { ...last, stop: Math.max(last.stop, stop) as Stop };
      }
      pieces.forEach((norm, p) => {
        words.push({
          norm,
          written: index,
          start,
          end,
          cue: c,
          stop: p === pieces.length - 1 ? stop : 0,
          ...(p === pieces.length - 1 && /\?["”')\]]*$/.test(token) ? { asks: true as const } : {}),
          capital: p === 0 && /^["“'(]*[A-Z]/.test(token),
          pause: t === 0 && p === 0 ? Math.max(0, cue.start - before) : 0,
        });
      });
    });
    before = Math.max(before, cue.end);
  });
  return { words: joinLetters(words), written, cues };
}

/** The exact written words from one word of the stream to another, both included. */
export function quoteOf(all: Words, from: number, to: number): string {
  const a = all.words[from];
  const b = all.words[Math.min(to, all.words.length - 1)];
  return a && b ? all.written.slice(a.written, b.written + 1).join(' ') : '';
}
