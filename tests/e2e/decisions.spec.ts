import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { drawer, finishes, openPage, sample, settled } from './page';

test.describe.configure({ mode: 'serial' });

let page: Page;

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' });
});
test.afterAll(() => page.context().close());

test('all pairs, by keyboard: squares are read out, outlined and explained', async () => {
  await page.getByRole('button', { name: 'All pairs in one table' }).focus();
  await page.keyboard.press('Enter');
  const panel = page.getByRole('region', { name: 'All pairs' });
  await expect(panel).toBeFocused();
  const table = panel.getByRole('table', { name: /^Every two finishes/ });
  // Demo: eight finishes, a square for every two of them.
  await expect(table.getByRole('button')).toHaveCount(28);
  const current = table.locator('[tabindex="0"]');
  await expect(current).toHaveCount(1);
  // Dark fronts on dark slate: their edge is the worst of this option.
  await expect(current).toHaveAccessibleName('Floor and fronts: an edge that is hard to see (visible); they touch');

  await current.focus();
  await page.keyboard.press('ArrowUp');
  await expect(page.locator(':focus')).toHaveAccessibleName(/^Counters and upstand and fronts: .*; they touch$/);
  const detail = panel.getByRole('region', { name: 'Counters and upstand and fronts' });
  await expect(detail.getByRole('row', { name: /^Vein and base/ })).toHaveCount(1);
  await expect(sample(page, 'counter')).toHaveAttribute('data-outlined', 'true');
  await expect(sample(page, 'base-fronts')).toHaveAttribute('data-outlined', 'true');
  await expect(sample(page, 'wall')).not.toHaveAttribute('data-outlined', 'true');
  await detail.getByText('Numbers').click();
  await expect(detail.getByText(/CIEDE2000/).first()).toBeVisible();
  await expectNoFindings(page, '.screen-findings', '.screen-ledge');

  await page.keyboard.press('Escape');
  await expect(panel).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'All pairs in one table' })).toBeFocused();
  await expect(sample(page, 'counter')).not.toHaveAttribute('data-outlined', 'true');
});

test('decisions: what is next and left, and what changing an early one unsettles', async () => {
  await page.getByRole('button', { name: 'Next to decide: fronts.' }).click();
  const panel = page.getByRole('region', { name: 'Decisions' });
  await expect(panel.getByText(/^Of \d+ finishes made for it, .* left\.$/).first()).toBeVisible();
  await expectNoFindings(page, '.screen-findings', '.screen-ledge');
  await panel.getByRole('button', { name: 'Decide: backsplash' }).click();
  await expect(panel.getByRole('button', { name: 'Reopen: backsplash' })).toBeVisible();
  await settled(page);
  await panel.getByRole('button', { name: /^Change: counters/ }).click();
  await expect(drawer(page)).toBeVisible();
  // A yellowish limestone under a neutral white tile: looks dirty (whites.test).
  await finishes(page).getByRole('option').filter({ hasText: 'ST-02' }).click();
  await page.keyboard.press('Escape');
  const notice = page.getByRole('status').filter({ hasText: 'works against' });
  await expect(notice).toContainText('Backsplash. The counters and the upstand look dirty');
  await expect(notice.getByRole('button', { name: 'Change: backsplash' })).toBeVisible();
  await expectNoFindings(page, '.screen-findings', '.screen-ledge');

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(notice).toHaveCount(0);
  await panel.getByRole('button', { name: 'Close' }).click();
  await expect(panel).toHaveCount(0);
});

test('the balance in every light is worked out when it is unfolded', async () => {
  await page.getByText('In every light of this project').click();
  await expect(page.getByText('In all of these lights the answer is that of the samples.')).toBeVisible();
});
