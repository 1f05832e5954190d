// Why: a person starts from nothing: an empty yard, a unit taken in, a walk's files dropped on it, the packet taken away.
import { join, resolve } from 'node:path';
import { unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBrowser, type Served, startServer } from '../browser.ts';

const walk = resolve(import.meta.dirname, '..', '..', 'demo', 'walks', 'hollowell-tern-38');
const nasty = 'Tern <img src=x onerror="window.hurt=1"><script>window.hurt=1</script>';
let served: Served;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  served = await startServer({ demo: false });
  browser = await openBrowser();
  page = await (
    await browser.newContext({ viewport: { width: 390, height: 844 }, acceptDownloads: true })
  ).newPage();
});
afterAll(async () => {
  await browser?.close();
  await served?.stop();
});

describe('from nothing, on a phone', () => {
  test('an empty yard says what to do first', async () => {
    await page.goto(served.address);
    await page.getByText('Take in a unit', { exact: false }).first().waitFor();
    expect(await page.locator('main').textContent()).toMatch(/no unit|nothing|empty|first/i);
  });

  test('a unit is taken in; HTML in its name is only letters', async () => {
    await page.getByRole('button', { name: 'Take in a unit' }).first().click();
    await page.getByLabel('What kind is it?').selectOption('class-a-diesel');
    await page.getByLabel('What do you call it?').fill(nasty);
    await page.getByLabel('Stock number').fill('N-1');
    await page.getByRole('button', { name: 'Take it in' }).click();
    await page.getByText('Drop the walk', { exact: false }).waitFor();
    expect(await page.locator('h1').textContent()).toBe(nasty);
    expect(await page.evaluate(() => (globalThis as { hurt?: number }).hurt)).toBeUndefined();
  });

  test('files dropped on it are sent with progress and accounted for, file by file', async () => {
    await page
      .getByLabel('Files of the walk')
      .setInputFiles(
        ['walk.vtt', 'readings.csv', 'drive.gpx', 'comps.csv', 'shop.json'].map((f) => join(walk, f)),
      );
    await page
      .getByText(/things? (was|were) heard|observations?|understood/i)
      .first()
      .waitFor({ timeout: 60_000 });
    await expect
      .poll(async () => page.locator('main').textContent(), { timeout: 60_000 })
      .toContain('walk.vtt');
    const yard = (await (await fetch(`${served.address}/api/units`)).json()) as {
      seen: number;
      name: string;
    }[];
    expect(yard).toHaveLength(1);
    expect(yard[0]!.seen).toBeGreaterThan(40);
  });

  test('what was understood is on the review sheet; a key accepts it', async () => {
    await page.getByRole('link', { name: 'Review', exact: true }).click();
    await page.getByText(/wait for you/).waitFor();
    const waiting = Number(/(\d+) of \d+ wait/.exec((await page.locator('main').textContent()) ?? '')?.[1]);
    expect(waiting).toBeGreaterThan(100);
    await page.keyboard.press('j');
    await page.keyboard.press('a');
    await page.getByText(`${waiting - 1} of`, { exact: false }).waitFor();
  });

  test('the packet is taken away as one file', async () => {
    await page.getByRole('link', { name: 'Listing' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download', { timeout: 60_000 }),
      page.getByRole('link', { name: 'All papers in one file' }).click(),
    ]);
    const stream = await download.createReadStream();
    const chunks: Uint8Array[] = [];
    for await (const c of stream) chunks.push(c as Uint8Array);
    const files = unzipSync(Buffer.concat(chunks));
    const names = Object.keys(files);
    for (const name of ['report.pdf', 'report.html', 'listing.html', 'chapters.vtt']) {
      expect(names.some((n) => n.endsWith(name))).toBe(true);
    }
    const listing = new TextDecoder().decode(files[names.find((n) => n.endsWith('listing.html'))!]);
    expect(listing).not.toContain('<img src=x');
    expect(listing).not.toContain('<script>window');
  });
});
