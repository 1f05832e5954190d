// Why: somebody who reviews a walk from the keyboard alone, knows what was misheard, and keeps a book of what he ruled.
import type { Page } from 'playwright-core';
import type { Proposed } from '../../../src/doors/web/review/proposed.ts';
import type { Observation } from '../../../src/said/entry.ts';
import { unitFact } from '../../../src/units/unit.ts';
import type { Pace } from './pace.ts';

/** What ought to be done with an observation: it is right, it was misheard, or it should have been this. */
export type Truth = 'right' | 'wrong' | { readonly typed: string };

interface Line {
  readonly id: string;
  readonly state: string;
  readonly isCalled: boolean;
  readonly text: string;
}

/** What stands in focus: its lines in order, and which of them is chosen. */
async function inFocus(page: Page): Promise<{
  readonly lines: readonly Line[];
  readonly chosen: string | undefined;
  readonly against: readonly string[];
}> {
  return (await page.evaluate(look)) as Awaited<ReturnType<typeof inFocus>>;
}
/** Run in the page. What is read of a line is its name, where it is shown, and its meaning. */
const look = `(() => {
  const here = document.querySelector('li[data-here="true"]');
  const lines = [...(here?.querySelectorAll('button.line') ?? [])].map((b) => ({
    id: b.dataset.of,
    state: b.dataset.state,
    isCalled: b.querySelector('.calls') !== null,
    text: [...b.querySelectorAll('.name:not(.unseen), .meaning, .calls')].map((e) => e.textContent).join(' '),
  }));
  const against = here?.querySelector('.decide')?.dataset.against ?? '';
  return { lines, against: against.split(' ').filter(Boolean), chosen: here?.querySelector('button.line[aria-expanded="true"]')?.dataset.of };
})()`;

export class Reviewer {
  /** What was ruled, the newest only: by the id of the observation. */
  readonly book = new Map<string, 'accept' | 'reject'>();
  /** What was typed instead, by the id of what it took the place of. */
  readonly fixed = new Map<string, string>();
  /** How many contradictions were settled with one key. */
  settledByOnly = 0;
  private readonly before: Map<string, 'accept' | 'reject' | undefined>[] = [];

  private readonly page: Page;
  private readonly pace: Pace;
  private readonly truthOf: (id: string) => Truth;
  private readonly all: ReadonlyMap<string, Proposed>;

  constructor(page: Page, pace: Pace, truthOf: (id: string) => Truth, all: readonly Proposed[]) {
    this.page = page;
    this.pace = pace;
    this.truthOf = truthOf;
    this.all = new Map(all.map((p) => [p.of.id, p]));
  }

  private async press(key: string): Promise<void> {
    this.pace.key(key);
    await this.page.keyboard.press(key === ' ' ? 'Space' : key);
  }
  /** Heard, and not yet accepted here: what one rules oneself is not thrown out again. */
  private isUnruled(id: string): boolean {
    return this.all.has(id) && this.book.get(id) !== 'accept';
  }
  private rule(ruled: readonly (readonly [string, 'accept' | 'reject'])[]): void {
    this.before.push(new Map(ruled.map(([id]) => [id, this.book.get(id)])));
    for (const [id, ruling] of ruled) {
      this.book.set(id, ruling);
      this.fixed.delete(id);
    }
  }

  async acceptSure(sure: readonly string[]): Promise<void> {
    this.pace.decide('Accept all that were heard surely?');
    await this.press('s');
    await this.press('Enter');
    this.rule(sure.map((id) => [id, 'accept']));
  }
  /** Takes the last step back. */
  async undo(): Promise<void> {
    this.pace.decide('undo');
    await this.press('u');
    for (const [id, ruling] of this.before.pop() ?? []) {
      this.fixed.delete(id);
      if (ruling === undefined) this.book.delete(id);
      else this.book.set(id, ruling);
    }
  }
  /** Listens to the words of what is in focus. */
  async listen(): Promise<void> {
    const { chosen } = await inFocus(this.page);
    const source = this.all.get(chosen ?? '')?.of.source;
    this.pace.decide('play');
    await this.press(' ');
    if (source?.from === 'speech') this.pace.listen(source.end - source.start + 1.5);
  }
  private async fix(id: string, typed: string): Promise<void> {
    await this.press('f');
    await this.page.locator('.decide .reading-field').waitFor();
    this.pace.decide(typed);
    this.pace.text(typed);
    await this.page.keyboard.type(typed);
    await this.press('Enter');
    await this.page.locator('.decide .reading-field').waitFor({ state: 'detached' });
    await this.settled(id);
    this.before.push(new Map([[id, this.book.get(id)]]));
    this.fixed.set(id, typed);
    this.book.delete(id);
  }

  /** Rules on all that is in focus; false when nothing waits there any more. */
  async ruleHere(): Promise<boolean> {
    const { lines, chosen, against } = await inFocus(this.page);
    const waiting = lines.filter((l) => l.state === 'waits');
    const at = waiting.find((l) => l.id === chosen);
    if (!at) return false;
    const truth = (l: Line): Truth => this.truthOf(l.id);
    if (waiting.length === 1 || lines.some((l) => l.isCalled)) {
      this.pace.decide(at.text);
      const is = truth(at);
      if (typeof is === 'object') await this.fix(at.id, is.typed);
      else if (is === 'right' && against.length > 0 && against.every((id) => this.isUnruled(id))) {
        await this.press('o');
        this.rule([[at.id, 'accept'], ...against.map((id) => [id, 'reject'] as const)]);
        this.settledByOnly += 1;
      } else {
        await this.press(is === 'right' ? 'a' : 'r');
        this.rule([[at.id, is === 'right' ? 'accept' : 'reject']]);
      }
    } else {
      this.pace.decide(waiting.map((l) => l.text).join(' '));
      const toFix = waiting.find((l) => typeof truth(l) === 'object');
      const wrong = waiting.filter((l) => truth(l) === 'wrong');
      if (wrong.length === waiting.length || (toFix && waiting.length - wrong.length === 1)) {
        const is = truth(at);
        if (typeof is === 'object') await this.fix(at.id, is.typed);
        else {
          await this.press(is === 'wrong' ? 'r' : 'a');
          this.rule([[at.id, is === 'wrong' ? 'reject' : 'accept']]);
        }
      } else {
        // Crossed out by their numbers, the chosen one last: rejecting it moves the focus on.
        for (const l of [...wrong].sort((a, b) => Number(a.id === chosen) - Number(b.id === chosen))) {
          this.pace.decide('');
          await this.press(String(lines.indexOf(l) + 1));
          this.rule([[l.id, 'reject']]);
          await this.settled(l.id, l.id === chosen);
        }
        if (toFix) {
          const now = await inFocus(this.page);
          const steps =
            now.lines.findIndex((l) => l.id === toFix.id) - now.lines.findIndex((l) => l.id === now.chosen);
          for (let i = 0; i < Math.abs(steps); i++) await this.press(steps > 0 ? 'j' : 'k');
          const is = truth(toFix);
          if (typeof is === 'object') await this.fix(toFix.id, is.typed);
        }
        const rest = waiting.filter((l) => truth(l) === 'right');
        const now = await inFocus(this.page);
        if (!now.lines.some((l) => rest.some((r) => r.id === l.id))) {
          // Fixing the last of the breath went on to the next one: the way back.
          await this.press('k');
        }
        await this.press('b');
        this.rule(rest.map((l) => [l.id, 'accept']));
      }
    }
    await this.settled(at.id);
    return true;
  }
  /** The screen shows what was ruled, and the focus has gone on. A person sees it at once; a test must not press ahead of it. */
  private async settled(id: string, goesOn = true): Promise<void> {
    await this.page
      .locator(`button.line[data-of="${id}"]:not([data-state="waits"])`)
      .or(this.page.locator(`body:not(:has(button.line[data-of="${id}"]))`))
      .first()
      .waitFor();
    if (!goesOn) return;
    await this.page
      .locator(`button.line[aria-expanded="true"]:not([data-of="${id}"])`)
      .or(this.page.getByText('Everything heard has been reviewed'))
      .first()
      .waitFor();
  }
}

/** A reading that was misheard, as somebody would type the right one: its number a tenth larger, with its unit. */
export function typedInstead(o: Observation): string | undefined {
  if (o.value.is !== 'quantity' || o.value.upTo !== undefined) return undefined;
  const { symbol } = unitFact(o.value.unit);
  const number = String(Number((o.value.value * 1.1).toPrecision(3)));
  return symbol === ''
    ? number
    : symbol.startsWith('/')
      ? `${number}${symbol.split(' ')[0]}`
      : `${number} ${symbol}`;
}
