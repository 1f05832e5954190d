// The story as one function: the log in, everything that follows from it out. Read this first.
import { figureAll } from './figured/figure-all.ts';
import { layFigures } from './figured/lay-figures.ts';
import { judge } from './judged/judge.ts';
import { factsOf } from './known/facts-of.ts';
import { fold } from './known/fold.ts';
import { wishesIn } from './planned/asked-for.ts';
import { plan } from './planned/plan.ts';
import { price } from './priced/price-unit.ts';
import type { Packet } from './published/document.ts';
import { publish } from './published/publish.ts';
import type { Entry } from './said/entry.ts';
import type { Day } from './units/day.ts';

/** Works out a unit's packet from its log, as of a day. Pure: the same log and day give the same packet. */
export function flow(log: Iterable<Entry>, on: Day): Packet {
  const record = fold(log);
  const seen = factsOf(record, on);
  const figures = figureAll(seen);
  const facts = layFigures(seen, figures);
  const findings = judge(facts);
  const jobs = plan(findings, record.shop, wishesIn(record.standing.values()));
  const priced = price(record.comparables, facts, jobs);
  return publish({ on, record, facts, figures, findings, jobs, price: priced });
}
