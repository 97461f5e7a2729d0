import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { openPage, reading } from './page';

test.describe.configure({ mode: 'serial' });

let page: Page;

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' });
});
test.afterAll(() => page.context().close());

const picture = () => page.getByRole('img', { name: /^The kitchen as/ });
const said = () => page.locator('.stage-fill > [role="status"]').first();
const mark = () => page.locator('.aim');

test('a mark moved by keys reads the point under it, says so, and goes with Esc', async () => {
  await picture().focus();
  await page.keyboard.press('m');
  await expect(mark()).toBeVisible();
  await expect(said()).toContainText('Reading mark');
  const before = (await mark().boundingBox())!;
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('ArrowRight');
  const after = (await mark().boundingBox())!;
  expect(after.y - before.y).toBeGreaterThan(10);
  expect(after.x - before.x).toBeGreaterThan(2);

  await page.keyboard.press('Enter');
  await expect(said()).toHaveText(/^[A-Z].*: [\d,]+ lx$/);
  // The focus stays in the picture, so that one can read on.
  await expect(picture()).toBeFocused();
  const card = reading(page);
  await expect(card).toContainText('At the point you chose');
  await expect(card).toContainText('lx of it direct');
  await page.keyboard.press('Escape');
  await expect(mark()).toHaveCount(0);
  await expect(card).not.toContainText('At the point you chose');
  await expect(card).toBeVisible();
});

test('M puts the mark from wherever the focus is, but for a text field', async () => {
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Light', exact: true }).click();
  await page.getByRole('checkbox', { name: 'Daylight' }).focus();
  await page.keyboard.press('m');
  await expect(mark()).toBeVisible();
  await expect(picture()).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(mark()).toHaveCount(0);
  await page.getByRole('textbox', { name: 'Name of the setting' }).press('m');
  await expect(mark()).toHaveCount(0);
  await page.getByRole('button', { name: 'Light', exact: true }).click();
  await picture().focus();
  await page.keyboard.press('m');
});

test('the parts of the light at a point add up to all of it', async () => {
  await page.keyboard.press('Enter');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Enter');
  const shares = reading(page).locator('.light-share');
  await expect(shares.first()).toBeVisible();
  const values = (await shares.allTextContents()).map((text) => Number.parseInt(text, 10));
  expect(values.length).toBeLessThanOrEqual(6);
  const sum = values.reduce((total, value) => total + value, 0);
  // Whole percents of up to six rows, and a rest under half a percent that is not shown.
  expect(Math.abs(sum - 100)).toBeLessThanOrEqual(4);
});

test('the sample is shown flat and upright with a sentence on both', async () => {
  const sign = reading(page).getByRole('img', { name: /^A sample standing on a line, [\d,]+ lx/ });
  await expect(sign).toBeVisible();
  await expect(reading(page)).toContainText(/Upright it reads|Flat and upright it reads/);
});

test('single letters turned off: M does nothing, Enter still puts the mark', async () => {
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('checkbox', { name: 'Single-letter keys' }).uncheck();
  await page.keyboard.press('Escape');
  await picture().focus();
  await page.keyboard.press('m');
  await expect(mark()).toHaveCount(0);
  await page.keyboard.press('Enter');
  await expect(mark()).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(reading(page)).toContainText('At the point you chose');
  await expectNoFindings(page);
});
