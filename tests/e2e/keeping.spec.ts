import { readFileSync } from 'node:fs';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { silence, watch } from './page';

// The project is kept in the browser. No light is worked out here: the workers say nothing.

/** The page as it is when one comes to it, without light. */
async function come(context: BrowserContext, id?: string): Promise<Page> {
  const page = await context.newPage();
  await silence(page);
  const nothing = 'export const Picture = () => null;';
  await page.route(/\/Picture-[^/]*\.js$/, (route) => route.fulfill({ contentType: 'text/javascript', body: nothing }));
  // A tab that crashed and is loaded again still knows what it was about.
  if (id) await page.addInitScript((open) => sessionStorage.setItem('upstand-open', open), id);
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
/** What may be lost, ms. */
const MOST_LOST_MS = 1000;

test.describe(() => {
  // The bound is one of real time: a machine that gives the page no time for a second says nothing of what is kept.
  test.describe.configure({ retries: 1 });

  test('a tab killed in mid-edit 50 times loses nothing older than a second', async ({ context }) => {
    const demo = readFileSync('demo-data/terrace.project.json', 'utf8');
    const tabs = Array.from({ length: TABS }, (_, i) => ({
      id: `kitchen-${i}`,
      typed: 0,
      killedAt: 0,
      times: new Map<number, number>(),
    }));
    const lost: number[] = [];
    for (let kill = 0; kill <= KILLS; kill++) {
      await Promise.all(
        tabs.map(async (tab) => {
          const page = await come(context, tab.id);
          if (kill === 0) {
            const buffer = Buffer.from(demo.replace('"id": "terrace"', `"id": "${tab.id}"`));
            await page.setInputFiles('input[type=file]', { name: 'mine.json', mimeType: 'application/json', buffer });
            await expect(page.getByRole('status').filter({ hasText: 'You are in' })).toBeVisible();
          }
          await project(page).click();
          const note = page.getByRole('textbox', { name: 'Note', exact: true });
          if (kill > 0) {
            const found = Number(await note.inputValue());
            const missing = tab.times.get(found + 1);
            lost.push(missing === undefined ? 0 : tab.killedAt - missing);
            tab.typed = found;
            tab.times.clear();
          }
          if (kill === KILLS) return page.close();
          await page.exposeFunction('typed', (count: number, at: number) => tab.times.set(count, at));
          await note.evaluate(typeOn, tab.typed);
          await page.waitForTimeout(MOST_LOST_MS * (1.1 + 0.3 * Math.random()));
          const crashed = page.waitForEvent('crash');
          const session = await context.newCDPSession(page);
          tab.killedAt = Date.now();
          session.send('Page.crash').catch(() => undefined);
          await crashed;
          await page.close();
        }),
      );
    }
    expect(lost).toHaveLength(TABS * KILLS);
    expect(Math.max(...lost)).toBeLessThan(MOST_LOST_MS);
  });
});

/** Runs in the page: types a number into the note, ten times a second, as fast as people type, each greater by one than the one before. */
function typeOn(note: Element, from: number): void {
  const set = Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, 'value')!.set!;
  let count = from;
  setInterval(() => {
    set.call(note, String(++count));
    note.dispatchEvent(new Event('input', { bubbles: true }));
    (window as unknown as { typed: (count: number, at: number) => void }).typed(count, Date.now());
  }, 100);
}
