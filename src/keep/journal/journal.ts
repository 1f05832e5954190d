// Why: the truth of an embedded keeper: appended to, synced, and only then acknowledged.
import { open, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Entry } from '../../said/entry.ts';
import type { Appended, Damage } from '../log.ts';
import { KeepProblem } from '../problem.ts';
import { KnownIds } from './known-ids.ts';
import { cutLines, readLine, type SoundLine } from './line.ts';
import { LineReader } from './line-reader.ts';
import { type KeptBefore, type PreparedGroup, prepareGroup } from './prepare.ts';
import { nothingYet, type Reached, scanSegment } from './scan.ts';
import { listSegments, makeFolder, nameOf, setTailAside } from './segments.ts';
import { Tail } from './tail.ts';

export interface JournalOptions {
  /** A new segment is begun when the next group would make the file larger. Bytes; 8 MiB unless told. */
  readonly segmentBytes?: number;
  /** Called with lines that have just been kept, before their append resolves. */
  readonly onKept?: (lines: readonly SoundLine[]) => void;
}

interface Call {
  readonly entries: readonly Entry[];
  readonly resolve: (answer: readonly Appended[]) => void;
  readonly reject: (problem: unknown) => void;
}

interface Segment {
  readonly number: number;
  /** n of its first sound line; 0 when it has none. */
  first: number;
  /** Sound lines in the segments before it. */
  readonly before: number;
  /** Sound, synced bytes. */
  size: number;
}

export class Journal {
  readonly damage: Damage[] = [];
  readonly #folder: string;
  readonly #options: JournalOptions;
  readonly #ids = new KnownIds();
  readonly #segments: Segment[] = [];
  #reached: Reached = nothingYet;
  #count = 0;
  readonly #tail: Tail;
  readonly #reader: LineReader;
  #waiting: Call[] = [];
  #writing: Promise<void> | undefined;
  #closed = false;

  private constructor(folder: string, options: JournalOptions) {
    this.#folder = folder;
    this.#tail = new Tail(folder);
    this.#reader = new LineReader(folder);
    this.#options = options;
  }

  /** Opens a folder, making it when it is not there. Checks every line; `damage` names what is not sound. */
  static async open(folder: string, options: JournalOptions = {}): Promise<Journal> {
    const journal = new Journal(folder, options);
    await makeFolder(folder);
    await journal.#scan();
    return journal;
  }

  /** Number and sum of the last line kept. */
  get reached(): { readonly n: number; readonly sum: string } {
    return this.#reached;
  }

  /** How many sound lines there are. */
  get count(): number {
    return this.#count;
  }

  /** The sum of line n, and how many sound lines there are up to it; nothing when there is no such line. */
  async at(n: number): Promise<{ readonly sum: string; readonly lines: number } | undefined> {
    const segment = this.#segments.findLast((one) => one.first > 0 && one.first <= n);
    let lines = segment?.before ?? 0;
    for await (const line of segment ? this.lines(segment.first - 1) : []) {
      lines++;
      if (line.n === n) return { sum: line.sum, lines };
      if (line.n > n) break;
    }
    return undefined;
  }

  /** Keeps entries. Resolves when they are synced; calls that arrive during a sync share the next one. */
  append(entries: readonly Entry[]): Promise<readonly Appended[]> {
    if (this.#closed) return Promise.reject(new KeepProblem('closed'));
    return new Promise((resolve, reject) => {
      this.#waiting.push({ entries, resolve, reject });
      this.#writing ??= this.#drain();
    });
  }

  /** Sound lines after line `after`, read from disk in order up to the last that was kept when asked. */
  async *lines(after = 0): AsyncGenerator<SoundLine> {
    const upTo = this.#reached.n;
    const segments = this.#segments.map((s) => ({ ...s }));
    let n = after;
    for (const [at, segment] of segments.entries()) {
      const next = segments.slice(at + 1).find((s) => s.first > 0);
      if (segment.first === 0 || segment.first > upTo || (next && next.first <= after + 1)) continue;
      for (const raw of cutLines((await readFile(this.#path(segment.number))).subarray(0, segment.size))) {
        const read = readLine(raw.bytes);
        if (!('sound' in read) || read.sound.n <= n) continue;
        n = read.sound.n;
        if (n > upTo) return;
        yield read.sound;
      }
    }
  }

  /** Finishes what was handed in and closes the file. */
  async close(): Promise<void> {
    this.#closed = true;
    while (this.#writing) await this.#writing;
    await this.#tail.close();
    await this.#reader.close();
  }

  #path(segment: number): string {
    return join(this.#folder, nameOf(segment));
  }

  async #scan(): Promise<void> {
    const numbers = await listSegments(this.#folder);
    for (const [at, number] of numbers.entries()) {
      const bytes = await readFile(this.#path(number));
      const segment: Segment = { number, first: 0, before: this.#count, size: bytes.length };
      const file = nameOf(number);
      const scanned = scanSegment(file, bytes, this.#reached, (line, offset, length) => {
        segment.first ||= line.n;
        this.#count++;
        this.#ids.add(line.entry.dealership, line.entry.id, line.position, {
          segment: number,
          offset,
          length,
        });
      });
      this.#reached = scanned.reached;
      this.#segments.push(segment);
      if (at < numbers.length - 1) {
        this.damage.push(...scanned.damage);
        continue;
      }
      await this.#mendEnd(segment, bytes, scanned);
      await this.#tail.resume(number, segment.size);
    }
  }

  /** So that writing can go on: a bad tail is set aside, a missing line feed put in. */
  async #mendEnd(segment: Segment, bytes: Buffer, scanned: ReturnType<typeof scanSegment>): Promise<void> {
    let aside: string | undefined;
    if (scanned.soundEnd < bytes.length) {
      aside = await setTailAside(this.#folder, segment.number, bytes, scanned.soundEnd);
      segment.size = scanned.soundEnd;
      this.#reached = { ...this.#reached, gap: false };
    }
    for (const one of scanned.damage) {
      const moved = aside !== undefined && one.line > scanned.soundLines;
      this.damage.push(moved ? { ...one, detail: `${one.detail}; set aside in ${aside}` } : one);
    }
    if (!scanned.lacksLineFeed) return;
    const file = await open(this.#path(segment.number), 'a');
    await file.write('\n');
    await file.sync();
    await file.close();
    segment.size += 1;
  }

  async #drain(): Promise<void> {
    await Promise.resolve();
    while (this.#waiting.length > 0) {
      const calls = this.#waiting;
      this.#waiting = [];
      try {
        const group = await this.#write(calls.map((call) => call.entries));
        for (const [at, call] of calls.entries()) call.resolve(group.answers[at] ?? []);
      } catch (problem) {
        for (const call of calls) call.reject(problem);
      }
    }
    this.#writing = undefined;
  }

  async #write(calls: readonly (readonly Entry[])[]): Promise<PreparedGroup> {
    const before: KeptBefore = {
      last: (dealership) => this.#ids.last(dealership),
      find: async (dealership, id) => {
        const where = this.#ids.get(dealership, id);
        return where && this.#reader.read(where);
      },
    };
    const group = await prepareGroup(calls, this.#reached, before);
    const last = group.lines.at(-1);
    if (!last) return group;
    const segment = await this.#segmentFor(group.bytes.length);
    await this.#tail.append(group.bytes);
    for (const { line, offset, length } of group.lines) {
      const where = { segment: segment.number, offset: segment.size + offset, length };
      this.#ids.add(line.entry.dealership, line.entry.id, line.position, where);
    }
    segment.first ||= group.lines[0]?.line.n ?? 0;
    segment.size += group.bytes.length;
    this.#count += group.lines.length;
    this.#reached = { n: last.line.n, sum: last.line.sum, gap: false };
    this.#options.onKept?.(group.lines.map((prepared) => prepared.line));
    return group;
  }

  /** The segment that takes so many bytes more, begun where the last one is full. */
  async #segmentFor(bytes: number): Promise<Segment> {
    const current = this.#segments.at(-1);
    const most = this.#options.segmentBytes ?? 8 * 1024 * 1024;
    if (current && (current.size === 0 || current.size + bytes <= most)) return current;
    await this.#tail.begin();
    const next: Segment = { number: this.#tail.segment, first: 0, before: this.#count, size: 0 };
    this.#segments.push(next);
    return next;
  }
}
