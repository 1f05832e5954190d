// Why: the yard opens from the terminal, says where, keeps its data, refuses a taken port or folder, and closes cleanly.

import type { ChildProcess } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { About, EntriesReply } from '../../src/doors/wire/api.ts';
import { envelope, nextId, post } from './server-house.ts';
import { begin, ended, walkwright } from './terminal.ts';

let box: string;
beforeAll(async () => {
  box = await mkdtemp(join(tmpdir(), 'walkwright-serve-'));
});
afterAll(() => rm(box, { recursive: true, force: true }));

/** Starts serving on a free port; resolves with the address that it prints. */
async function open(
  args: readonly string[] = [],
): Promise<{ child: ChildProcess; at: string; done: ReturnType<typeof ended> }> {
  const child = begin(['serve', '--port', '0', '--data', join(box, 'data'), ...args], {
    env: { WALKWRIGHT_DEALERSHIP: 'test-lot' },
  });
  const done = ended(child);
  const at = await new Promise<string>((resolve, reject) => {
    let text = '';
    child.stdout?.on('data', (d: string) => {
      text += d;
      const m = /http:\/\/localhost:\d+/.exec(text);
      if (m) resolve(m[0]);
    });
    void done.then((ran) => reject(new Error(`ended with ${ran.code}: ${ran.err}`)));
  });
  return { child, at, done };
}

describe('serve', () => {
  test('opens, keeps, closes on a signal, and has everything when opened again; export and import carry it', async () => {
    const unit = nextId();
    const first = await open();
    const about = (await (await fetch(`${first.at}/api/about`)).json()) as About;
    expect(about).toMatchObject({ dealership: 'test-lot', today: '2026-11-24' });
    const entry = { ...envelope(unit), kind: 'unit', name: 'Kept', vehicle: 'class-c' };
    expect((await fetch(`${first.at}/api/entries`, post({ entries: [entry] }))).status).toBe(200);

    const second = await walkwright(['export', '--out', join(box, 'x.jsonl'), '--data', join(box, 'data')]);
    expect(second.code).toBe(1);
    expect(second.err).toContain('open in another program');

    const live = await fetch(`${first.at}/api/live`);
    first.child.kill('SIGTERM');
    const ran = await first.done;
    expect([ran.code, ran.err.includes('Error')]).toEqual([0, false]);
    expect(ran.out).toContain('Closed.');
    await live.body?.cancel().catch(() => {});

    const again = await open();
    const kept = (await (await fetch(`${again.at}/api/units/${unit}/entries`)).json()) as EntriesReply;
    expect(kept.entries.map((k) => k.entry)).toEqual([entry]);
    again.child.kill('SIGINT');
    expect((await again.done).code).toBe(0);

    const out = await walkwright(['export', '--out', join(box, 'log.jsonl'), '--data', join(box, 'data')]);
    expect(out).toMatchObject({ code: 0, err: '' });
    const into = await walkwright(['import', join(box, 'log.jsonl'), '--data', join(box, 'other')]);
    expect(into.code).toBe(0);
    expect(into.out).toMatch(/^\d+ entries kept, 0 were there already/);
    const twice = await walkwright(['import', join(box, 'log.jsonl'), '--data', join(box, 'other')]);
    expect(twice.out).toMatch(/^0 entries kept, \d+ were there already/);
    await writeFile(join(box, 'log.jsonl'), 'not a line of a journal\n', { flag: 'a' });
    const damaged = await walkwright(['import', join(box, 'log.jsonl'), '--data', join(box, 'other')]);
    expect(damaged.code).toBe(1);
    expect(damaged.err).toMatch(/log\.jsonl:\d+: /);
  }, 120_000);

  test('a port that is taken is a clear error, and nothing is opened', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const { port } = other.address() as AddressInfo;
    const ran = await walkwright(['serve', '--data', join(box, 'never')], { env: { PORT: String(port) } });
    other.close();
    expect([ran.code, ran.out]).toEqual([1, '']);
    expect(ran.err).toContain(`port ${port}: Another program listens on that port already.`);
  });
});
