// Why: what hands do on the review sheet: readings typed as said, words chosen by mouse, keys and finger, steps taken back, a phone turned to and fro.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { EntriesReply } from '../../src/doors/wire/api.ts';
import type { Entry, Observation } from '../../src/said/entry.ts';
import { openBrowser, type Served, startServer } from '../browser.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
let served: Served;
let browser: Browser;
let unit: string;
const entriesNow = async (): Promise<readonly Entry[]> =>
  (
    (await (await fetch(`${served.address}/api/units/${unit}/entries?after=0`)).json()) as EntriesReply
  ).entries.map((k) => k.entry);
const fromHere = async (): Promise<readonly Observation[]> =>
  (await entriesNow()).filter((e): e is Observation => e.kind === 'observation' && e.device === 'web');
const newestRulings = async (): Promise<ReadonlyMap<string, string>> =>
  new Map((await entriesNow()).flatMap((e) => (e.kind === 'ruling' ? [[e.on, e.ruling] as const] : [])));
const chosen = (page: Page) => page.locator('button.line[aria-expanded="true"]');
const openAt = async (width: number, height: number, hasTouch = false): Promise<Page> => {
  const page = await (await browser.newContext({ viewport: { width, height }, hasTouch })).newPage();
  await page.goto(`${served.address}/unit/${unit}/review`);
  await page.getByText(/wait for you/).waitFor();
  return page;
};

beforeAll(async () => {
  served = await startServer();
  browser = await openBrowser();
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

describe('at a desk, by keyboard', () => {
  let page: Page;
  beforeAll(async () => {
    page = await openAt(1440, 1000);
  });
  afterAll(async () => page.context().close());

  test('words, player and what was heard stand side by side; the contradicted comes first and says by what', async () => {
    const words = await page.getByRole('region', { name: 'The words' }).boundingBox();
    const heard = await page.getByRole('region', { name: 'What was heard' }).boundingBox();
    const player = await page.getByRole('region', { name: 'The recording' }).boundingBox();
    expect(words!.x + words!.width).toBeLessThanOrEqual(heard!.x + 1);
    expect(player!.x).toBeGreaterThanOrEqual(heard!.x);
    expect(player!.y + player!.height).toBeLessThan(1000);
    expect(await chosen(page).innerText()).toContain('contradicted');
    expect(await page.locator('.versus').first().innerText()).toMatch(
      /^Against length 38.5 ft, read from a paper/,
    );
  });

  test('a reading of the wrong kind is refused, what was typed stays; the right one shows what it is in other units', async () => {
    await page.keyboard.press('j');
    expect(await chosen(page).innerText()).toContain('tread mid 9/32 in');
    await page.keyboard.press('f');
    const field = page.locator('.decide .reading-field');
    await expect.poll(() => field.evaluate((e) => e === e.ownerDocument.activeElement)).toBe(true);
    await page.keyboard.type('105 psi');
    await page.keyboard.press('Enter');
    expect(await page.locator('.decide .trouble').innerText()).toMatch(
      /“105 psi” is a pressure\. Tread mid is a length/,
    );
    expect(await field.inputValue()).toBe('105 psi');
    await page.keyboard.press('Control+a');
    await page.keyboard.type('7 to 8/32');
    expect(await page.locator('.understood').innerText()).toMatch(/7\/32 to 8\/32 in|7 to 8\/32 in.*=.*mm/s);
    await page.keyboard.press('Enter');
    await field.waitFor({ state: 'detached' });
    await expect
      .poll(async () => (await fromHere()).map((o) => o.value))
      .toEqual([{ is: 'quantity', value: 7, upTo: 8, unit: '[in_i]/32' }]);
  });

  test('five steps are taken back one by one, each by a ruling of its own', async () => {
    const [fix] = await fromHere();
    await expect.poll(async () => (await newestRulings()).get(fix!.id)).toBe('accept');
    const before = (await entriesNow()).length;
    const ids: string[] = [];
    for (const key of ['a', 'r', 'a', 'r']) {
      ids.push((await chosen(page).getAttribute('data-of')) ?? '');
      await page.keyboard.press(key);
      await page.locator(`button.line[data-of="${ids.at(-1)}"]:not([data-state="waits"])`).waitFor();
    }
    for (let i = 0; i < 4; i++) await page.keyboard.press('u');
    await page.getByText('Taken back: accepted', { exact: false }).waitFor();
    expect(await chosen(page).getAttribute('data-of')).toBe(ids[0]);
    await expect.poll(async () => (await entriesNow()).length).toBe(before + 8);
    const rulings = await newestRulings();
    expect(ids.map((id) => rulings.get(id))).toEqual(['open', 'open', 'open', 'open']);
    await page.keyboard.press('u');
    const [fixed] = await fromHere();
    await expect.poll(async () => (await newestRulings()).get(fixed!.id)).toBe('reject');
    await page.locator('.heard-pane').getByText('tread mid 9/32 in').first().waitFor();
  });

  test('all that are sure are accepted after saying how many, and taken back with one key', async () => {
    const waiting = async (): Promise<string> =>
      (await page.locator('.heard-head h2').innerText()).split(' ')[0]!;
    const all = Number(await waiting());
    await page.keyboard.press('s');
    const asked = await page.getByRole('dialog').innerText();
    const sure = Number(/Accept the (\d+) that/.exec(asked)?.[1]);
    expect(sure).toBeGreaterThan(30);
    await page.keyboard.press('Escape');
    expect(Number(await waiting())).toBe(all);
    await page.keyboard.press('s');
    await page.keyboard.press('Enter');
    await expect.poll(async () => Number(await waiting())).toBe(all - sure);
    await page.keyboard.press('u');
    await expect.poll(async () => Number(await waiting())).toBe(all);
  });

  test('words are chosen by keys and made into an observation that is guessed from them', async () => {
    await page.keyboard.press('w');
    await page.locator('.make-offer').waitFor();
    const first = await page.locator('.make-offer').innerText();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    expect(await page.locator('.make-offer').innerText()).not.toBe(first);
    await page.keyboard.press('Escape');
    await page.locator('.make-offer').waitFor({ state: 'detached' });

    await page.locator('.held').focus();
    await page.getByText('length 38.167 ft').first().click();
    await page.keyboard.press('w');
    await page.getByText('“thirty-eight foot two', { exact: false }).waitFor();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('m');
    const field = page.locator('.make .reading-field');
    await field.waitFor();
    expect(await field.inputValue()).toMatch(/^38\.1/);
    await page.keyboard.type('38 ft 2.5 in');
    await page.keyboard.press('Enter');
    await field.waitFor({ state: 'detached' });
    await expect
      .poll(async () => (await fromHere()).at(-1))
      .toMatchObject({
        part: 'coach',
        aspect: 'length',
        value: { is: 'quantity', value: 38 + 2.5 / 12, unit: '[ft_i]' },
        source: { from: 'speech', words: 'thirty-eight foot two, I' },
      });
    await page.keyboard.press('u');
    await expect.poll(async () => (await newestRulings()).get((await fromHere()).at(-1)!.id)).toBe('reject');
  });
});

describe('with a mouse and with a finger', () => {
  test('words that are dragged over are offered, guessed at, changed and written down with their seconds', async () => {
    const page = await openAt(1440, 1000);
    const line = page.locator('[data-cue-text]', { hasText: 'Microwave works' }).first();
    await line.scrollIntoViewIfNeeded();
    const mark = await line.locator('mark', { hasText: 'Microwave works' }).boundingBox();
    await page.mouse.move(mark!.x + 2, mark!.y + mark!.height / 2);
    await page.mouse.down();
    await page.mouse.move(mark!.x + mark!.width - 2, mark!.y + mark!.height / 2, { steps: 6 });
    await page.mouse.up();
    await page.getByText('“Microwave works', { exact: false }).waitFor();
    const before = (await fromHere()).length;
    await page.getByRole('button', { name: 'Make an observation' }).click();
    const form = page.getByRole('region', { name: 'An observation of these words' });
    await form.getByText('Microwave', { exact: false }).first().waitFor();
    await form.getByText('weak', { exact: true }).click({ force: true });
    await form.getByRole('button', { name: 'Write it down' }).click();
    await form.waitFor({ state: 'detached' });
    await expect.poll(async () => (await fromHere()).length).toBe(before + 1);
    const made = (await fromHere()).at(-1)!;
    expect(made).toMatchObject({
      part: 'microwave',
      aspect: 'operates',
      value: { is: 'state', state: 'weak' },
      source: { from: 'speech', words: expect.stringMatching(/^Microwave works/) },
    });
    expect(made.source.from === 'speech' && made.source.start).toBeGreaterThan(600);
    expect((await newestRulings()).get(made.id)).toBe('accept');
    await page.context().close();
  });

  test('on a phone words and list take turns without losing their place, and the player stays', async () => {
    const page = await openAt(390, 844, true);
    const scrolled = () => page.locator('.scroll').evaluate((e) => e.scrollTop);
    await page.locator('button.line').nth(7).click();
    const of = await chosen(page).getAttribute('data-of');
    await page.locator('.scroll').evaluate((e) => e.scrollBy(0, 40));
    const at = await scrolled();
    await page.getByLabel('All the words').check({ force: true });
    const mark = page.locator('mark[data-chosen="true"]').first();
    await mark.waitFor();
    const box = await mark.boundingBox();
    expect(box!.y).toBeGreaterThan(60);
    expect(box!.y).toBeLessThan(620);
    // What is in focus went along, with its buttons and the player in reach.
    const accept = await page
      .locator('.dock')
      .getByRole('button', { name: 'Accept', exact: false })
      .first()
      .boundingBox();
    expect(accept!.y).toBeGreaterThan(300);
    expect(accept!.y + accept!.height).toBeLessThan(844);
    expect(accept!.height).toBeGreaterThanOrEqual(44);
    const foot = await page.locator('.foot').boundingBox();
    expect(foot!.y + foot!.height).toBeLessThanOrEqual(844);
    await page.locator('.scroll').evaluate((e) => e.scrollBy(0, 90));
    const read = await scrolled();
    await page.getByLabel('What was heard').check({ force: true });
    expect(await chosen(page).getAttribute('data-of')).toBe(of);
    expect(Math.abs((await scrolled()) - at)).toBeLessThan(3);
    await page.getByLabel('All the words').check({ force: true });
    expect(Math.abs((await scrolled()) - read)).toBeLessThan(3);
    await page.context().close();
  });
});

describe.each([
  [1440, 'Day'],
  [1440, 'Dark'],
  [390, 'Day'],
  [390, 'Full sun'],
] as const)('at %i px, %s', (width, mode) => {
  test('what opens on the sheet breaks no rule of axe-core: a fix, chosen words, the question, the words on a phone', async () => {
    // The app's own policy forbids scripts from elsewhere; the checker is let in past it, nothing else is.
    const context = await browser.newContext({ viewport: { width, height: 900 }, bypassCSP: true });
    const page = await context.newPage();
    await page.goto(served.address);
    await page.getByText(mode, { exact: true }).first().click({ force: true });
    await page.goto(`${served.address}/unit/${unit}/review`);
    await page.getByText(/wait for you/).waitFor();
    await page.addScriptTag({ content: axe });
    const broken: string[] = [];
    const check = async (what: string): Promise<void> => {
      const found = (await page.evaluate('axe.run(document, { resultTypes: ["violations"] })')) as {
        violations: readonly { id: string; nodes: readonly { html: string }[] }[];
      };
      for (const v of found.violations) broken.push(`${what}: ${v.id}: ${v.nodes[0]?.html.slice(0, 160)}`);
      const wide = (await page.evaluate('document.documentElement.scrollWidth')) as number;
      const tall = (await page.evaluate('document.documentElement.scrollHeight')) as number;
      if (wide > width || tall > 900)
        broken.push(`${what}: ${wide} by ${tall} px on a screen of ${width} by 900`);
    };
    await page.keyboard.press('j');
    await page.keyboard.press('f');
    await page.locator('.reading-field').waitFor();
    await page.keyboard.type('105 psi');
    await page.keyboard.press('Enter');
    await page.locator('.trouble').waitFor();
    await check('a fix');
    await page.keyboard.press('Escape');
    if (width < 800) await page.getByLabel('All the words').check({ force: true });
    await check('the words');
    await page.keyboard.press('w');
    await page.locator('.make-offer').waitFor();
    await check('words offered');
    await page.keyboard.press('m');
    await page.locator('.make form').waitFor();
    await check('words made into something');
    await page.keyboard.press('Escape');
    await page.keyboard.press('s');
    await page.getByRole('dialog').waitFor();
    await check('the question');
    await context.close();
    expect(broken).toEqual([]);
  });
});
