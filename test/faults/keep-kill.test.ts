// Why: whatever was acknowledged must be there after the process was killed at any moment; none half, none twice.
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { canonicalJson } from '../../src/keep/canonical.ts';
import { Journal } from '../../src/keep/journal/journal.ts';
import { openKeeper } from '../../src/keep/open-keeper.ts';
import type { Entry } from '../../src/said/entry.ts';
import { startPostgres } from '../postgres.ts';
import { bundleChild, killAfter } from './keep-child.ts';
import { madeEntries, madeEntry, numberOf, seeded } from './keep-entries.ts';

const seed = 20_260_105;
const appends = 10_000;
let child: ReturnType<typeof bundleChild>;
let scratch: string;

beforeAll(async () => {
  child = bundleChild();
  scratch = await mkdtemp(join(tmpdir(), 'walkwright-kill-'));
});
afterAll(async () => {
  child.remove();
  await rm(scratch, { recursive: true, force: true });
});

/** Every entry is one that was handed in, whole, and stands there once; every acknowledged one is among them. */
function check(kept: readonly Entry[], acknowledged: ReadonlySet<number>, said: string): void {
  const seen = new Set<number>();
  for (const entry of kept) {
    const number = numberOf(entry.id);
    if (seen.has(number)) throw new Error(`${said}: entry ${number} stands there twice`);
    if (canonicalJson(entry) !== canonicalJson(madeEntry(number)))
      throw new Error(`${said}: entry ${number} is not whole`);
    seen.add(number);
  }
  const lost = [...acknowledged].filter((number) => !seen.has(number));
  expect(lost, `${said}: acknowledged and lost`).toEqual([]);
}

async function journalEntries(folder: string): Promise<{ entries: Entry[]; damage: Journal['damage'] }> {
  const journal = await Journal.open(join(folder, 'journal'));
  const entries: Entry[] = [];
  for await (const line of journal.lines()) entries.push(line.entry);
  await journal.close();
  return { entries, damage: journal.damage };
}

test('the journal, killed 50 times at seeded moments of 10,000 appends, five times in each folder', async () => {
  const dice = seeded(seed);
  let killed = 0;
  let cut = 0;
  let folder = '';
  let acknowledged = new Set<number>();
  for (let run = 0; run < 50; run++) {
    if (run % 5 === 0) {
      folder = await mkdtemp(join(scratch, 'journal-'));
      acknowledged = new Set();
    }
    const first = (run % 5) * appends;
    const moment = Math.floor(dice() * appends * 0.9);
    const args = ['journal', folder, String(first), String(appends), String(seed + run)];
    const ran = await killAfter(child.file, args, moment, dice() * 5);
    if (ran.signal === 'SIGKILL' && !ran.finished) killed++;
    for (const number of ran.acknowledged) acknowledged.add(number);
    expect(ran.acknowledged.length).toBeGreaterThanOrEqual(moment);
    const { entries, damage } = await journalEntries(folder);
    check(entries, acknowledged, `run ${run}, seed ${seed}`);
    expect(damage.every((one) => one.code === 'cut-short')).toBe(true);
    cut += damage.length;
    for (const { id } of entries) acknowledged.add(numberOf(id));
  }
  expect(killed, 'most runs must really have been cut off in the middle').toBeGreaterThan(40);
  console.info(`50 runs, ${killed} killed before the end, ${cut} lines found cut short and set aside`);
}, 240_000);

test('the whole embedded keeper (journal and index), killed 4 times, reads back and goes on', async () => {
  const dice = seeded(seed + 1);
  const folder = await mkdtemp(join(scratch, 'keeper-'));
  const acknowledged = new Set<number>();
  const reach = 4000;
  for (let run = 0; run < 4; run++) {
    const args = ['keeper', folder, String(run * reach), String(reach), String(seed + run)];
    const ran = await killAfter(child.file, args, Math.floor(dice() * reach), dice() * (run % 2 ? 2500 : 5));
    expect(ran.signal).toBe('SIGKILL');
    for (const number of ran.acknowledged) acknowledged.add(number);
    const keeper = await openKeeper({ folder });
    const kept = (await keeper.log.read({ dealership: 'invented-yard' })).map((one) => one.entry);
    check(kept, acknowledged, `run ${run}, seed ${seed + 1}`);
    const again = madeEntries(run * reach, reach);
    const answers = await keeper.log.append(again);
    expect(answers.filter((one) => one.is === 'refused')).toEqual([]);
    const whole = (await keeper.log.read({ dealership: 'invented-yard' })).map((one) => one.entry);
    check(whole, new Set(again.map((entry) => numberOf(entry.id))), `run ${run}, sent again`);
    for (const entry of whole) acknowledged.add(numberOf(entry.id));
    expect(keeper.damage.every((one) => one.code === 'cut-short')).toBe(true);
    await keeper.close();
  }
  expect((await readdir(folder)).filter((name) => name.includes('set-aside'))).toEqual([]);
}, 180_000);

test('a client of PostgreSQL, killed 5 times, has lost nothing that was acknowledged', async () => {
  const dice = seeded(seed + 2);
  const postgres = await startPostgres();
  const folder = await mkdtemp(join(scratch, 'postgres-'));
  const acknowledged = new Set<number>();
  for (let run = 0; run < 5; run++) {
    const args = [
      'postgres',
      folder,
      String(run * appends),
      String(appends),
      String(seed + run),
      postgres.url,
    ];
    const ran = await killAfter(child.file, args, Math.floor(dice() * 3000), dice() * 20);
    expect(ran.signal).toBe('SIGKILL');
    for (const number of ran.acknowledged) acknowledged.add(number);
    const keeper = await openKeeper({ folder, databaseUrl: postgres.url });
    const kept = await keeper.log.read({ dealership: 'invented-yard' });
    check(
      kept.map((one) => one.entry),
      acknowledged,
      `run ${run}, seed ${seed + 2}`,
    );
    expect(kept.map((one) => one.position)).toEqual(kept.map((_, at) => at + 1));
    await keeper.close();
  }
  await postgres.stop();
}, 120_000);
