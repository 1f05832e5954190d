// Why: the index must know how much of the journal it holds, in the same transaction as what it holds.
import type { Kysely } from 'kysely';
import type { Journal } from '../journal/journal.ts';
import type { SoundLine } from '../journal/line.ts';
import { insertRows, toRow } from '../tables/queries.ts';
import type { Tables } from '../tables/schema.ts';

export interface IndexState {
  /** The last line of the journal taken in. */
  readonly n: number;
  readonly sum: string;
  /** How many lines have been taken in. */
  readonly lines: number;
}

export const emptyIndex: IndexState = { n: 0, sum: '', lines: 0 };

export async function readState(db: Kysely<Tables>): Promise<IndexState> {
  const row = await db.selectFrom('walkwright.index_state').select(['n', 'sum', 'lines']).executeTakeFirst();
  return row ? { n: Number(row.n), sum: row.sum, lines: Number(row.lines) } : emptyIndex;
}

/** Whether what the index holds is the beginning of this journal, no more and no less. */
export async function fits(db: Kysely<Tables>, state: IndexState, journal: Journal): Promise<boolean> {
  const count = await db
    .selectFrom('walkwright.entry')
    .select((on) => on.fn.countAll<number>().as('rows'))
    .executeTakeFirstOrThrow();
  if (Number(count.rows) !== state.lines) return false;
  if (state.n === 0) return true;
  const there = await journal.at(state.n);
  return there !== undefined && there.sum === state.sum && there.lines === state.lines;
}

/** Takes lines in, all or none, and returns the new state. */
export async function takeIn(
  db: Kysely<Tables>,
  state: IndexState,
  lines: readonly SoundLine[],
): Promise<IndexState> {
  const last = lines.at(-1);
  if (!last) return state;
  const next: IndexState = { n: last.n, sum: last.sum, lines: state.lines + lines.length };
  await db.transaction().execute(async (trx) => {
    await insertRows(
      trx,
      lines.map((line) => toRow(line.position, line.entry, line.text)),
    );
    await trx
      .insertInto('walkwright.index_state')
      .values({ one: true, ...next })
      .onConflict((at) => at.column('one').doUpdateSet({ ...next }))
      .execute();
  });
  return next;
}
