import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { watch } from './page';

// The project is kept in the browser. No light is worked out here: the workers say nothing.

/** The page as it is when one comes to it, without light. */
async function come(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.route(/\.worker[^/]*\.js$/, (route) => route.fulfill({ contentType: 'text/javascript', body: '' }));
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
