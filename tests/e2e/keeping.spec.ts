import { readFileSync } from 'node:fs';
import { type BrowserContext, type CDPSession, expect, type Page, test } from '@playwright/test';
import { silence, watch } from './page';

// The project is kept in the browser. No light is worked out here: the workers say nothing.

/** The page as it is when one comes to it, without light. */
async function come(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await silence(page);
  const nothing = 'export const Picture = () => null;';
  await page.route(/\/Picture-[^/]*\.js$/, (route) => route.fulfill({ contentType: 'text/javascript', body: nothing }));
  await page.goto('./');
  await expect(undo(page)).toBeVisible();
  return page;
}

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const redo = (page: Page) => page.getByRole('button', { name: /^Redo/ });
const kept = (page: Page) => page.locator('.bar-kept');
const project = (page: Page) => page.locator('.bar-project-name');
const options = (page: Page) => page.locator('.option-switch').getByRole('radio');

async function act(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name, exact: true }).click();
}

test('a change is kept at once and said so; after a reload it can be undone and done again', async ({ context }) => {
  const page = await come(context);
  const { problems } = watch(page);
  await expect(kept(page)).toHaveText('');
  await act(page, 'Copy this option');
  await expect(options(page)).toHaveCount(3);
  await expect(kept(page)).toHaveText('Kept in this browser');
  await page.reload();
  await expect(options(page)).toHaveCount(3);
  await expect(undo(page)).toHaveAccessibleName('Undo: copy option as "Third idea"');
  await undo(page).click();
  await expect(options(page)).toHaveCount(2);
  // Nothing older than a second is lost.
  await page.waitForTimeout(1000);
  await page.reload();
  await expect(options(page)).toHaveCount(2);
  await expect(undo(page)).toBeDisabled();
  await redo(page).click();
  await expect(options(page)).toHaveCount(3);
  expect(problems).toEqual([]);
});

test('a second tab is told, can take the project over or go on with a copy', async ({ context }) => {
  const first = await come(context);
  await act(first, 'Copy this option');
  await expect(kept(first)).toHaveText('Kept in this browser');
  const second = await come(context);
  await expect(options(second)).toHaveCount(3);
  await expect(second.getByRole('alert')).toContainText('open in another tab');
  await expect(kept(second)).toHaveText(/^Not kept/);
  await act(second, 'Remove this option');

  await second.getByRole('button', { name: 'Go on here' }).click();
  await expect(first.getByRole('alert')).toContainText('Another tab went on');
  await expect(kept(first)).toHaveText(/^Not kept/);
  await expect(kept(second)).toHaveText('Kept in this browser');
  await expect(options(second)).toHaveCount(2);
  await undo(second).click();
  await expect(options(second)).toHaveCount(3);

  await act(first, 'Remove this option');
  await first.getByRole('button', { name: 'Go on with a copy' }).click();
  await expect(kept(first)).toHaveText('Kept in this browser');
  await expect(project(first)).toHaveText(/\(copy\)$/);
  await expect(options(first)).toHaveCount(2);
  await first.reload();
  await expect(project(first)).toHaveText(/\(copy\)$/);
  await expect(undo(first)).toBeEnabled();
  await second.reload();
  await expect(project(second)).not.toHaveText(/copy/);
  await expect(options(second)).toHaveCount(3);
});

/** Tabs that are worked in at once, each in a project of its own, and how often each is killed: 50 kills. */
const TABS = 5;
const KILLS = 10;
/** Keystrokes of one second: less than these may be lost. They are counted, as a machine with little time for the page has little for typing. */
const SECOND = 10;

test('a tab killed in mid-edit 50 times loses nothing older than a second', async ({ browser }) => {
  // 55 openings of the page: on a slow machine some minutes.
  test.setTimeout(900_000);
  // What is drawn is looked at by nobody.
  const context = await browser.newContext({ viewport: { width: 480, height: 360 } });
  const demo = readFileSync('demo-data/terrace.project.json', 'utf8');
  const lost: number[] = [];
  const workIn = async (id: string) => {
    let typed = 0;
    for (let kill = 0; kill <= KILLS; kill++) {
      const { page, session } = await comeToType(context, id);
      if (kill === 0) {
        const buffer = Buffer.from(demo.replace('"id": "terrace"', `"id": "${id}"`));
        await page.setInputFiles('input[type=file]', { name: 'mine.json', mimeType: 'application/json', buffer });
        await expect(page.getByRole('status').filter({ hasText: 'You are in' })).toBeVisible();
      }
      await project(page).click();
      const note = page.getByRole('textbox', { name: 'Note', exact: true });
      if (kill > 0) {
        const found = Number(await note.inputValue());
        lost.push(Math.max(0, typed - found));
        typed = found;
      }
      if (kill === KILLS) return page.close();
      const enough = typed + Math.ceil(SECOND * (1.1 + 0.3 * Math.random()));
      await new Promise<void>((resolve) => {
        const count = (now: number) => {
          typed = now;
          if (now >= enough) resolve();
        };
        page.exposeFunction('typed', count).then(() => note.evaluate(typeOn, typed));
      });
      const crashed = page.waitForEvent('crash');
      session.send('Page.crash').catch(() => undefined);
      await crashed;
      await page.close();
    }
  };
  await Promise.all(Array.from({ length: TABS }, (_, i) => workIn(`kitchen-${i}`)));
  expect(lost).toHaveLength(TABS * KILLS);
  expect(Math.max(...lost)).toBeLessThan(SECOND);
  await context.close();
});

/** The page without picture, and with no file of it passing through the test: fifty times, that is what takes the time. */
async function comeToType(context: BrowserContext, id: string): Promise<{ page: Page; session: CDPSession }> {
  const page = await context.newPage();
  await silence(page);
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.setBlockedURLs', { urls: ['*/Picture-*.js'] });
  // A tab that crashed and is loaded again still knows what it was about.
  await page.addInitScript((open) => sessionStorage.setItem('upstand-open', open), id);
  await page.goto('./');
  await expect(undo(page)).toBeVisible();
  return { page, session };
}

/**
 * Runs in the page: types a number into the note, ten times a second, as fast as people type, each greater by one than the one before.
 * As keys do, each comes by way of the browser: it waits until the one before was told there.
 */
function typeOn(note: Element, from: number): void {
  const set = Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, 'value')!.set!;
  const { typed } = window as unknown as { typed: (count: number) => Promise<void> };
  const type = async (count: number) => {
    set.call(note, String(count));
    note.dispatchEvent(new Event('input', { bubbles: true }));
    await typed(count);
    setTimeout(type, 100, count + 1);
  };
  type(from + 1);
}
