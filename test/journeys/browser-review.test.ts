// Why: the main story in a real browser: open the yard, review the demo walk, reject one observation and see what follows change,
// add a reading, publish.
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { minutes } from '../../src/doors/words/minutes.ts';
import { flow } from '../../src/flow.ts';
import type { Finding } from '../../src/judged/finding.ts';
import type { Packet } from '../../src/published/document.ts';
import { factWords, subjectTitle } from '../../src/published/plain-subject.ts';
import type { Observation } from '../../src/said/entry.ts';
import { day } from '../../src/units/day.ts';
import { openBrowser, type Served, startServer, today } from '../browser.ts';

let served: Served;
let browser: Browser;
let page: Page;
let unit: string;

const packetNow = async (): Promise<Packet> => {
  const reply = (await (await fetch(`${served.address}/api/units/${unit}/entries?after=0`)).json()) as {
    entries: { entry: Parameters<typeof flow>[0] extends Iterable<infer E> ? E : never }[];
  };
  return flow(
    reply.entries.map((k) => k.entry),
    day(today),
  );
};

/** A finding that must be settled and stands on one spoken observation alone. */
function onOneWord(packet: Packet): { readonly finding: Finding; readonly of: Observation } {
  const { findings } = packet;
  for (const finding of findings) {
    const of = finding.fact?.evidence[0];
    if (finding.verdict !== 'repair' || finding.fact?.evidence.length !== 1 || of?.source.from !== 'speech')
      continue;
    if (findings.filter((f) => f.fact?.evidence.some((o) => o.id === of.id)).length === 1)
      return { finding, of };
  }
  throw new Error('no finding of the demo stands on one spoken observation');
}

beforeAll(async () => {
  served = await startServer();
  browser = await openBrowser();
  page = await (await browser.newContext({ viewport: { width: 1440, height: 1000 } })).newPage();
  const yard = (await (await fetch(`${served.address}/api/units`)).json()) as {
    unit: string;
    name: string;
  }[];
  unit = yard.find((r) => r.name === 'Hollowell Tern 38')!.unit;
});
afterAll(async () => {
  await browser?.close();
  await served?.stop();
});

describe('review, correct, publish', () => {
  let one: { readonly finding: Finding; readonly of: Observation };

  test('the yard shows the demo unit with what stops it; it opens', async () => {
    await page.goto(served.address);
    await page.getByRole('link', { name: 'Hollowell Tern 38' }).click();
    await page.getByRole('link', { name: 'Findings' }).click();
    await page.getByText('What must be settled first').waitFor();
    expect(await page.locator('.head').innerText()).toContain('invented unit');
  });

  test('one rejected observation takes its finding off the findings sheet and out of the report', async () => {
    const before = await packetNow();
    one = onOneWord(before);
    const report = await (await fetch(`${served.address}/api/units/${unit}/documents/report.html`)).text();
    const words = one.of.source.from === 'speech' ? one.of.source : undefined;
    await page.getByRole('link', { name: 'Review', exact: true }).click();
    await page.getByLabel('in order').check();
    await page
      .locator('button.line', { hasText: subjectTitle(one.of) })
      .filter({ hasText: factWords(one.of) })
      .filter({ hasText: minutes(words!.start) })
      .first()
      .click();
    expect(await page.locator('.quote').first().innerText()).toBe(words!.words);
    await page.getByRole('button', { name: 'Reject', exact: true }).click();
    await page.getByText('It stays in the log; nothing follows from it any more.').waitFor();

    await expect.poll(async () => (await packetNow()).record.out.has(one.of.id)).toBe(true);
    const after = await packetNow();
    expect(after.findings.filter((f) => f.fact?.evidence.some((o) => o.id === one.of.id))).toEqual([]);
    expect(after.findings.find((f) => f.id === one.finding.id)?.verdict).not.toBe('repair');
    const shown = await page.locator('.head').innerText();
    expect(shown.replace(/\s+/g, ' ')).toContain(`${after.report.tally.repair} repair`);
    const changed = await (await fetch(`${served.address}/api/units/${unit}/documents/report.html`)).text();
    expect(changed).not.toBe(report);
  });

  test('a reading written by hand is judged at once and kept', async () => {
    await page.getByRole('link', { name: 'Add' }).click();
    await page.getByRole('combobox', { name: 'Which part?' }).fill('roof membrane');
    await page.keyboard.press('Enter');
    await page.getByLabel('What of it?').selectOption({ label: 'tears' });
    await page.getByLabel('tears: how many?').first().fill('3');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('Kept: Roof membrane').waitFor();
    await expect
      .poll(async () => (await packetNow()).facts.get('roof_membrane', 'tears')?.value)
      .toEqual({ is: 'count', count: 3 });
    const finding = (await packetNow()).findings.find(
      (f) => f.part === 'roof_membrane' && f.aspect === 'tears',
    );
    expect(finding?.verdict).toMatch(/repair|stop|watch/);
    await page.getByRole('link', { name: 'Findings' }).click();
    await page
      .getByRole('button', { name: /Roof membrane/ })
      .first()
      .waitFor();
  });

  test('every figure opens its working', async () => {
    await page.getByRole('link', { name: 'Figures' }).click();
    await page.locator('button.line').first().click();
    await page.getByText('Formula', { exact: false }).first().waitFor();
  });

  test('the listing shows its sentences with what backs them; it is published and the log says so', async () => {
    await page.getByRole('link', { name: 'Listing' }).click();
    await page.getByRole('button', { name: 'Publish it' }).click();
    await page.getByText('Published; what went out is written into the log.').waitFor({ timeout: 60_000 });
    const packet = await packetNow();
    expect(packet.record.publications).toHaveLength(1);
    expect(packet.record.publications[0]!.documents.map((d) => d.name)).toContain('report.pdf');
  });

  test('two open windows agree without reloading', async () => {
    const other = await (await browser.newContext()).newPage();
    await other.goto(`${served.address}/unit/${unit}/findings`);
    await other.getByText('What must be settled first').waitFor();
    const before = (await packetNow()).report.tally;
    await page.getByRole('link', { name: 'Add' }).click();
    await page.getByRole('combobox', { name: 'Which part?' }).fill('roof membrane');
    await page.keyboard.press('Enter');
    await page.getByLabel('Where on the unit?').selectOption('rear');
    await page.getByLabel('What of it?').selectOption({ label: 'tears' });
    await page.getByLabel('tears: how many?').first().fill('2');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('Kept: Roof membrane').waitFor();
    await expect
      .poll(async () => (await packetNow()).report.tally.repair + (await packetNow()).report.tally.stop)
      .toBeGreaterThan(before.repair + before.stop);
    const { tally } = (await packetNow()).report;
    await expect
      .poll(async () => (await other.locator('.head').innerText()).replace(/\s+/g, ' '), { timeout: 15_000 })
      .toContain(`${tally.repair} repair`);
    await other.close();
  });
});
