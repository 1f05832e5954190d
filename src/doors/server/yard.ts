// Why: the yard's rows and the packets behind them are worked out from the log, and again only when it has grown or the day has turned.

import { flow } from '../../flow.ts';
import type { Log } from '../../keep/log.ts';
import { unitName } from '../../known/unit-name.ts';
import type { Packet } from '../../published/document.ts';
import { sizesOf } from '../../published/drawing/sizes.ts';
import type { Entry, Ruling } from '../../said/entry.ts';
import { type Day, daysBetween, readDay } from '../../units/day.ts';
import type { YardRow } from '../wire/api.ts';
import { subjectTitle } from '../words/say-value.ts';

export interface Yard {
  rows(): Promise<readonly YardRow[]>;
  /** A unit's packet as of today, with the id of the last entry it was made from; undefined when the log has nothing of the unit. */
  packet(
    unit: string,
  ): Promise<{ readonly packet: Packet; readonly upTo: string; readonly last: number } | undefined>;
}

const mostPackets = 8;
const breathe = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

interface Made {
  readonly packet: Packet;
  readonly upTo: string;
  readonly last: number;
  readonly on: Day;
  /** Ids of observations that somebody has ruled on. */
  readonly ruled: ReadonlySet<string>;
}

export function makeYard(log: Log, dealership: string, today: () => Day): Yard {
  const rows = new Map<string, { readonly row: YardRow; readonly on: Day }>();
  const packets = new Map<string, Made>();

  /** Asked by several at once: worked out once, as long as nothing has been kept since the work began. */
  const making = new Map<string, { readonly from: number; readonly made: Promise<Made | undefined> }>();
  let kept = 0;
  log.watch(() => {
    kept++;
  });

  function make(unit: string): Promise<Made | undefined> {
    const running = making.get(unit);
    if (running && running.from === kept) return running.made;
    const made = makeNew(unit).finally(() => {
      if (making.get(unit)?.made === made) making.delete(unit);
    });
    making.set(unit, { from: kept, made });
    return made;
  }

  async function makeNew(unit: string): Promise<Made | undefined> {
    const kept = await log.read({ dealership, unit });
    const newest = kept.at(-1);
    if (!newest) return undefined;
    const on = today();
    const before = packets.get(unit);
    if (before && before.last === newest.position && before.on === on) return before;
    await breathe();
    const made = {
      packet: flow(
        kept.map((k) => k.entry),
        on,
      ),
      upTo: newest.entry.id,
      ruled: ruledOf(kept.map((k) => k.entry)),
      last: newest.position,
      on,
    };
    packets.delete(unit);
    packets.set(unit, made);
    const oldest = packets.keys().next().value;
    if (packets.size > mostPackets && oldest !== undefined) packets.delete(oldest);
    return made;
  }

  return {
    packet: make,
    async rows() {
      const found: YardRow[] = [];
      for (const { unit, last } of await log.units(dealership)) {
        const known = rows.get(unit);
        if (known && known.row.last === last && known.on === today()) {
          found.push(known.row);
          continue;
        }
        const made = await make(unit);
        if (!made) continue;
        const row = rowOf(unit, made);
        rows.set(unit, { row, on: made.on });
        found.push(row);
      }
      return found;
    },
  };
}

/** What the newest ruling on it accepts or rejects; what was opened again waits like what nobody has ruled on. */
function ruledOf(entries: readonly Entry[]): ReadonlySet<string> {
  const newest = new Map<string, Ruling>();
  for (const e of entries) {
    const had = e.kind === 'ruling' ? newest.get(e.on) : undefined;
    if (e.kind === 'ruling' && (!had || had.at < e.at || (had.at === e.at && had.id < e.id)))
      newest.set(e.on, e);
  }
  return new Set([...newest].flatMap(([on, r]) => (r.ruling === 'open' ? [] : [on])));
}

function rowOf(unit: string, { packet, last, on, ruled }: Made): YardRow {
  const { unit: facts, coverage } = packet.record;
  const arrived = facts.arrived === undefined ? undefined : readDay(facts.arrived);
  const sum = (of: (c: (typeof coverage)[number]) => number): number =>
    coverage.reduce((s, c) => s + of(c), 0);
  return {
    unit,
    name: unitName(packet.facts),
    ...(facts.stock === undefined ? {} : { stock: facts.stock }),
    ...(facts.vehicle === undefined ? {} : { vehicle: facts.vehicle }),
    ...(facts.year === undefined ? {} : { year: facts.year }),
    ...(arrived === undefined ? {} : { arrived, daysHere: daysBetween(arrived, on) }),
    invented: facts.invented,
    putAway: facts.putAway,
    stage: stageOf(packet, ruled),
    blockedBy: packet.findings.filter((f) => f.verdict === 'stop').map((f) => subjectTitle(f)),
    tally: packet.report.tally,
    seen: sum((c) => c.seen.length),
    expected: sum((c) => c.expected.length),
    ...(facts.asking === undefined ? {} : { askingCents: facts.asking }),
    sizes: sizesOf(packet.facts),
    last,
  };
}

/** Published once given out; reviewed once somebody has ruled on everything that was proposed from speech. */
function stageOf({ record }: Packet, ruled: ReadonlySet<string>): YardRow['stage'] {
  if (record.publications.length > 0) return 'published';
  if (record.standing.size === 0) return 'nothing yet';
  const isOpen = [...record.standing.values()].some((o) => o.source.from === 'speech' && !ruled.has(o.id));
  return isOpen ? 'walked' : 'reviewed';
}
