import { expect, type Page, test } from '@playwright/test';
import { findings, openPage, reading, settled } from './page';

test.describe.configure({ mode: 'serial' });

let page: Page;
test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { permissions: ['clipboard-read', 'clipboard-write'] });
  await findings(page).getByRole('button', { name: 'Readings' }).click();
  await reading(page)
    .getByRole('combobox', { name: /^Surface/ })
    .selectOption('base-fronts');
});
test.afterAll(() => page.context().close());

const lights = () => reading(page).getByRole('region', { name: 'The sample in each light, without the room' });
const row = (name: RegExp) =>
  lights()
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name }) });

test('says of a finish how far its color is known and that its spectrum is guessed', async () => {
  const card = reading(page);
  await expect(
    card.getByText('Declared by the supplier: as a rule within about 1 dE00, about what eyes can just tell'),
  ).toBeVisible();
  await expect(card.getByText('Guessed from the color', { exact: true })).toBeVisible();
});

test('shows what each light of the project makes of the finish, by words and not by a mark alone', async () => {
  await expect(row(/^Day 6504 K \(now\)/)).toContainText('Stays');
  // Under the evening lamps the fronts shift or cannot be told: a range, never a single guess.
  await expect(row(/^Evening 2993 K/)).toContainText(/(Shifts|Cannot tell)\s*\d\.\d to \d\.\d/);
  await expect(row(/^Filament lamp 2856 K/)).toBeVisible();
  // The evening mixes the standard LED with pendants of another lamp: both stand there.
  await expect(lights().getByRole('rowheader', { name: /2998 K/ })).toHaveCount(1);
});

test('holds another surface beside it and answers in a sentence', async () => {
  await lights().getByRole('combobox', { name: 'Held beside' }).selectOption('wall');
  await expect(lights().getByText(/^Two different colors \(\d+\.\d CIEDE2000 apart by day\)/)).toBeVisible();
  await reading(page)
    .getByRole('combobox', { name: /^Surface/ })
    .selectOption('backsplash');
  // Another surface starts alone.
  await expect(lights().getByRole('combobox', { name: 'Held beside' })).toHaveValue('');
  await lights().getByRole('combobox', { name: 'Held beside' }).selectOption('wall');
  await expect(
    lights().getByText(/^Cannot tell from here whether they match by day: they differ by \d\.\d CIEDE2000/),
  ).toBeVisible();
  await reading(page).getByRole('button', { name: 'Copy numbers' }).click();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toContain('The sample in each light');
  expect(copied).toMatch(/Evening, 2993 K: Lab .*; shift \d\.\d dE00/);
  expect(copied).toContain('spectrum guessed from the color');
});

test('marks the setting that is on screen', async () => {
  await reading(page)
    .getByRole('combobox', { name: /^Surface/ })
    .selectOption('base-fronts');
  await page.locator('.choice', { has: page.getByRole('radio', { name: 'Evening', exact: true }) }).click();
  await settled(page);
  await expect(row(/^Evening 2993 K \(now\)/)).toBeVisible();
});
