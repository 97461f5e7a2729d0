import { expect, type Page, test } from '@playwright/test';
import { choose, drawer, findings, finishes, openPage, sample, sentence, settled } from './page';

// The findings follow the values of the finishes, whatever their names.

test.describe.configure({ mode: 'serial' });

let page: Page;

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser);
});
test.afterAll(() => page.context().close());

const shares = () => page.locator('.balance-table tbody tr').first().locator('td').allTextContents();
const warmShare = async () => Number.parseInt((await shares())[0]!, 10);

/** Lays a typed-in color on a surface. */
async function typeIn(surface: string, lab: string, name: string): Promise<void> {
  await sample(page, surface).click();
  await choose(page, 'Type one in');
  const form = drawer(page).locator('form');
  await form.getByLabel('L*, a*, b* (D65, 2°)').fill(lab);
  await form.getByLabel('Call it').fill(name);
  await form.getByRole('button', { name: 'Use it' }).click();
  await expect(finishes(page).getByRole('option', { selected: true })).toContainText(name);
  await page.keyboard.press('Escape');
  await settled(page);
}

test('a warm backsplash under any name turns the balance, and a cool one does not', async () => {
  const before = (await sentence(page).textContent())!;
  await expect(findings(page).getByText(/^Nothing large you see is warm/)).toBeVisible();
  expect(await warmShare()).toBe(0);

  // Strong orange, named as if it were cool: only the numbers may count.
  await typeIn('backsplash', '60, 35, 50', 'Ice blue');
  await expect(findings(page).getByText(/^Nothing large you see is warm/)).toHaveCount(0);
  await expect(sentence(page)).not.toHaveText(before);
  expect(await warmShare()).toBeGreaterThan(3);

  await typeIn('backsplash', '60, -12, -28', 'Warm terracotta');
  await expect(findings(page).getByText(/^Nothing large you see is warm/)).toBeVisible();
  expect(await warmShare()).toBe(0);

  await page.getByRole('button', { name: /^Undo: .*terracotta/ }).click();
  await page.getByRole('button', { name: /^Undo: .*Ice blue/ }).click();
  await settled(page);
  await expect(sentence(page)).toHaveText(before);
});

test('a white that is too yellow beside the counter is found, and a neutral one is not', async () => {
  const yellow = () => findings(page).locator('.warning', { hasText: /yellow/i });
  await typeIn('backsplash', '92, -1, 1', 'White one');
  const without = await yellow().count();
  await typeIn('backsplash', '88, 0, 14', 'White two');
  await expect(yellow()).not.toHaveCount(without);
  await page.getByRole('button', { name: /^Undo: .*White two/ }).click();
  await settled(page);
  await expect(yellow()).toHaveCount(without);
});
