// Why: every sheet can be used by everybody: axe-core finds nothing, nothing runs off the screen, on desk and phone, by day, dark and sun.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBrowser, type Served, startServer } from '../browser.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const sheets = ['', '/add', '/review', '/findings', '/figures', '/listing'] as const;
let served: Served;
let browser: Browser;
let unit: string;

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

interface AxeResult {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

describe.each([
  { width: 1440, height: 1000 },
  { width: 390, height: 844 },
])('at $width px', (viewport) => {
  test.each(['Day', 'Dark', 'Full sun'])(
    '%s: no sheet breaks a rule of axe-core or runs off the screen',
    async (mode) => {
      // The app's own policy forbids scripts from elsewhere; the checker is let in past it, nothing else is.
      const page = await (await browser.newContext({ viewport, bypassCSP: true })).newPage();
      await page.goto(served.address);
      await page.getByText(mode, { exact: true }).first().click({ force: true });
      const broken: string[] = [];
      for (const sheet of sheets) {
        await page.goto(`${served.address}${sheet === '' ? '/' : `/unit/${unit}${sheet}`}`);
        await page.locator('h1').first().waitFor();
        await page.waitForLoadState('networkidle').catch(() => undefined);
        const line = page.locator('button.line').first();
        if (await line.count()) await line.click();
        await page.addScriptTag({ content: axe });
        const result = (await page.evaluate(
          'axe.run(document, { resultTypes: ["violations"] })',
        )) as AxeResult;
        for (const v of result.violations)
          broken.push(`${sheet || 'yard'}: ${v.id}: ${v.nodes[0]?.html.slice(0, 160)}`);
        const wide = (await page.evaluate('document.documentElement.scrollWidth')) as number;
        if (wide > viewport.width)
          broken.push(`${sheet || 'yard'}: ${wide} px wide on a screen of ${viewport.width}`);
      }
      await page.context().close();
      expect(broken).toEqual([]);
    },
  );
});
