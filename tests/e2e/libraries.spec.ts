import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { openPage, prepare } from './page';

// Nothing here needs light; the import worker must run.
test.describe.configure({ mode: 'serial' });

let page: Page;
test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce', acceptDownloads: true }, { dark: true });
});
test.afterAll(() => page.context().close());

const dialog = () => page.locator('dialog.libraries');
const button = (name: string | RegExp) => dialog().getByRole('button', { name });
const rows = () => dialog().locator('.range-finish');
const file = (name: string, text: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
const choose = (name: string, text: string) =>
  dialog().locator('.import input[type=file]').first().setInputFiles(file(name, text));

async function openLibraries(): Promise<void> {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: 'Libraries…' }).click();
  await expect(dialog()).toBeVisible();
}

/** As a spreadsheet in a country of decimal commas saves it: byte order mark, semicolons, German headings. */
const EU = [
  '\uFEFFNr;Name;L*;a*;b*;LRV %;Lichtart;Beobachter',
  '100;"Oat Linen";86,18;1,70;10,53;68,3;D65;10°',
  '101;"Harbor Slate";43,50;-2,08;-4,66;13,5;D65;10°',
  '102;"Moss Shelf";52,76;-12,49;17,28;20,8;D65;10°',
].join('\r\n');

/** A formula for a name, an impossible lightness, no numbers, a code twice, an LRV that contradicts the color. */
const HOSTILE = [
  'code,name,lab_l,lab_a,lab_b,lrv',
  'EX-1,"=HYPERLINK(""http://example.invalid"")",80,1,9,57',
  'EX-2,Too bright,104,0,0,112',
  'EX-3,No numbers,,,,',
  'EX-4,Dup code,50,0,0,18',
  'EX-4,Dup code,50,0,0,18',
  'EX-5,LRV disagrees,50,0,0,60',
].join('\n');

test('the libraries are a place of their own, where the project’s finishes are looked through by keys', async () => {
  await openLibraries();
  await expect(dialog().getByText('No library is kept here yet')).toBeVisible();
  const grid = dialog().getByRole('grid', { name: 'Finishes of this library' });
  const all = Number(/^\d+/.exec((await dialog().locator('.range-count').textContent())!)![0]);
  expect(all).toBeGreaterThan(50);
  await expect(grid).toHaveAttribute('aria-rowcount', String(all + 1));
  // Only what is in sight is made.
  expect(await rows().count()).toBeLessThan(all);
  await rows().first().focus();
  await page.keyboard.press('End');
  await expect(dialog().locator(`[aria-rowindex="${all + 1}"]`)).toBeFocused();
  await page.keyboard.press('Home');
  await expect(dialog().locator('[aria-rowindex="2"]')).toBeFocused();
  await page.keyboard.press('Shift+ArrowDown');
  await expect(dialog().getByText('2 finishes chosen')).toBeVisible();
  await expectNoFindings(page, 'dialog.libraries');
  await button('Choose none').click();

  await dialog().getByLabel('Search').fill('blue satin');
  await expect(dialog().locator('.range-count')).toContainText(/^\d of \d+ finishes/);
  await dialog().getByLabel('Search').fill('');
});

test('a file is read by what it says, asked what it does not, and nothing is kept before it is wanted', async () => {
  await button('Import a file…').first().click();
  await expectNoFindings(page, 'dialog.libraries');
  await choose('finishes-eu.csv', EU);
  const outcome = dialog().getByRole('region', { name: 'What becomes of it' });
  await expect(outcome.getByRole('heading')).toHaveText('0 finishes can be kept, 3 wait for an answer');
  await expect(dialog().getByText('Columns: all 8 understood')).toBeVisible();
  await expect(button(/^Keep 0/)).toBeDisabled();
  await dialog().getByLabel('Material', { exact: true }).selectOption('paint');
  await expect(outcome.getByRole('heading')).toHaveText(/^3 finishes can be kept/);
  await expect(outcome.getByText('LRV 68.3 printed')).toBeVisible();
  await expectNoFindings(page, 'dialog.libraries');
  await dialog().getByLabel('Its name').fill('Showroom paints');
  await button(/^Keep 3 finishes/).click();
  await expect(dialog().getByRole('heading', { name: 'Showroom paints' })).toBeVisible();
  await expect(rows()).toHaveCount(3);
});

test('rows of a hostile file are refused by line with the reason, the rest can be kept beside what is there', async () => {
  await button('Import a file…').first().click();
  await choose('hostile.csv', HOSTILE);
  const outcome = dialog().getByRole('region', { name: 'What becomes of it' });
  await dialog().getByLabel('Material', { exact: true }).selectOption('paint');
  await dialog().getByLabel('Light and observer of the numbers').selectOption('D65, 10°');
  await expect(outcome.getByRole('heading')).toHaveText('3 finishes can be kept, 3 refused, 3 to look at');
  await expect(outcome.getByText('L* is 104, outside 0 to 100.')).toBeVisible();
  await expect(outcome.getByText('EX-3, Line 4')).toBeVisible();
  await expect(outcome.getByText('The printed LRV is 60')).toBeVisible();
  await expectNoFindings(page, 'dialog.libraries');
  // Leaving asks: the answers would go.
  await page.keyboard.press('Escape');
  await expect(dialog().getByText('Leave without keeping them?')).toBeVisible();
  await button('Stay').click();
  await dialog().getByLabel('Keep them in').selectOption({ label: 'Showroom paints' });
  await button(/^Keep 3 finishes/).click();
  await expect(rows()).toHaveCount(6);
  await button(/^Undo: keep 3 finishes/).click();
  await expect(rows()).toHaveCount(3);
});

test('a finish is changed, several are tagged, and all of it is there after a reload', async () => {
  await rows().first().focus();
  await page.keyboard.press('Enter');
  const form = dialog().getByRole('form', { name: 'Oat Linen' });
  await form.getByLabel('Name').fill('Oat Linen, washable');
  await form.getByLabel('Price band').selectOption('$$');
  await form.getByLabel('Lead time, weeks').fill('3');
  await form.getByLabel('How known').selectOption('by-eye');
  await expect(form.getByText('judged by eye')).toBeVisible();
  await expectNoFindings(page, 'dialog.libraries');
  await form.getByLabel('Gloss at 60°, GU').fill('many');
  await expect(button('Keep the changes')).toBeDisabled();
  await form.getByLabel('Gloss at 60°, GU').fill('12');
  await button('Keep the changes').click();
  await expect(rows().first()).toContainText('Oat Linen, washable');
  await expect(rows().first()).toBeFocused();

  await dialog().getByLabel('Choose all shown').check();
  await button('Change them…').click();
  await dialog().getByLabel('Tag', { exact: true }).fill('spring');
  await button(/^Add$/).click();
  await expect(dialog().locator('.tag')).toHaveText(['spring', 'spring', 'spring']);

  await page.reload();
  await openLibraries();
  await button(/^Showroom paints/).click();
  await expect(rows().first()).toContainText('Oat Linen, washable');
  await expect(rows().first()).toContainText('Middle price');
  await expect(dialog().locator('.tag')).toHaveCount(3);
});

test('a press on the name of a column puts the finishes in its order, and another the other way round', async () => {
  const column = dialog().getByRole('columnheader', { name: 'LRV' });
  const lrvs = async () =>
    (await dialog().locator('.range-finish .range-lrv').allTextContents()).map((text) => Number(/\d+/.exec(text)?.[0]));
  await expect(column).not.toHaveAttribute('aria-sort');
  await column.getByRole('button').click();
  await expect(column).toHaveAttribute('aria-sort', 'ascending');
  await expect(dialog().getByLabel('Order')).toHaveValue('lrv');
  await expect.poll(lrvs).toEqual([13, 21, 68]);
  await column.getByRole('button').focus();
  await page.keyboard.press('Enter');
  await expect(column).toHaveAttribute('aria-sort', 'descending');
  await expect.poll(lrvs).toEqual([68, 21, 13]);
  await expectNoFindings(page, 'dialog.libraries');
  await dialog().getByLabel('Order').selectOption('library');
  await dialog().getByRole('button', { name: 'Other way round' }).click();
  await expect(rows().first()).toContainText('Oat Linen');
});

test('what another tab changed meanwhile is not taken back by an undo here', async () => {
  await button(/^Rename…/).click();
  await dialog().getByRole('textbox', { name: 'Name' }).fill('Showroom walls');
  await button('Keep the name').click();
  await expect(dialog().getByRole('heading', { name: 'Showroom walls' })).toBeVisible();
  const other = await page.context().newPage();
  await prepare(other, { dark: true });
  await other.goto(page.url());
  await other.getByRole('button', { name: 'More', exact: true }).click();
  await other.getByRole('button', { name: 'Libraries…' }).click();
  const there = other.locator('dialog.libraries');
  await there.getByRole('button', { name: /^Showroom walls/ }).click();
  await there.getByRole('button', { name: /^Rename…/ }).click();
  await there.getByRole('textbox', { name: 'Name' }).fill('Showroom paints');
  await there.getByRole('button', { name: 'Keep the name' }).click();
  await expect(there.getByRole('heading', { name: 'Showroom paints' })).toBeVisible();
  await other.close();
  // It is shown here as it is there.
  await expect(dialog().getByRole('heading', { name: 'Showroom paints' })).toBeVisible();
  await button(/^Undo: rename/).click();
  await expect(dialog().getByRole('alert')).toContainText('cannot be undone: it was changed elsewhere');
  await expect(dialog().getByRole('heading', { name: 'Showroom paints' })).toBeVisible();
});

test('a library is copied to a file, removed, and brought back', async () => {
  await button('Copy to file…').click();
  await dialog().locator('.choice', { hasText: 'Table (.csv)' }).click();
  const saved = page.waitForEvent('download');
  await button('Save the file').click();
  const download = await saved;
  expect(download.suggestedFilename()).toBe('Showroom paints.csv');
  const text = await readFile(await download.path(), 'utf8');
  expect(text.startsWith('\uFEFFschema,code,name')).toBe(true);
  expect(text).toContain('Oat Linen, washable');

  await button(/^Remove$/).click();
  await expect(button(/^Showroom paints/)).toHaveCount(0);
  // What was done can be taken back as long as the page is open, also after the dialog was closed.
  await button('Close').click();
  await expect(dialog()).toHaveCount(0);
  await openLibraries();
  await expect(button('Undo: remove Showroom paints')).toBeVisible();
  await button('Bring back').click();
  await expect(button(/^Showroom paints/)).toBeVisible();
});

test('a large file is read aside, and reading it can be ended', async () => {
  await button('Import a file…').first().click();
  const line = (i: number) => `L-${i},Finish ${i},${20 + (i % 70)},${i % 9},${i % 13},D65,10,paint,10`;
  const many = [
    'code,name,lab_l,lab_a,lab_b,illuminant,observer_deg,class,gloss_60',
    ...Array.from({ length: 60_000 }, (_, i) => line(i)),
  ];
  await choose('large.csv', many.join('\n'));
  await button('Cancel').click();
  await expect(button('Choose a file…')).toBeVisible();
  await choose('broken.csv', '\u0000\u0001\u0002 no table \u0000');
  await expect(dialog().getByRole('alert')).toContainText('Nothing was changed.');
});

test('in the dark the libraries are as readable', async () => {
  await button('Back to the libraries').click();
  await page.evaluate(() => {
    document.documentElement.dataset['theme'] = 'dark';
  });
  await expectNoFindings(page, 'dialog.libraries');
  await page.keyboard.press('Escape');
  await expect(dialog()).toHaveCount(0);
});

/** A price list of a tile shop in Germany, invented. */
const TILES = [
  'Art.-Nr.;Name;Material;L*;a*;b*;Lichtart;Beobachter;Glanz;Format;UVP €/m²;Lagerbestand;Rätsel',
  'F-1;Travertine look;Feinsteinzeug;82,4;-1,6;8,2;D50;2°;12;600 x 1200 x 9 mm;49,90;124;a',
  'F-2;Slate look;Feinsteinzeug;38,0;-1,5;-5,5;D50;2°;10;300 x 600 x 9 mm;1.249,00 €/Paket;0;b',
  'F-3;Oak look;Dielenkram;68,0;6;22;D50;2°;20;;auf Anfrage;auf Bestellung;c',
].join('\r\n');

test('what a file says of color, price, size and material is shown as it says it, and an answer moves the preview', async () => {
  await openLibraries();
  await button('Import a file…').first().click();
  await choose('tiles.csv', TILES);
  const outcome = dialog().getByRole('region', { name: 'What becomes of it' });
  await expect(outcome.getByRole('heading')).toHaveText('2 finishes can be kept, 1 waits for an answer');
  await expect(outcome.getByText('L* 82.4, a* −1.6, b* 8.2 · D50, 2°')).toBeVisible();
  await expect(outcome.getByText('€49.90 / m² · In stock')).toBeVisible();
  await expect(outcome.getByText('€1,249.00 / pack · Not in stock')).toBeVisible();

  await expect(dialog().getByText('Materials: 1 of 2 words not understood')).toBeVisible();
  await expect(dialog().getByLabel('Meaning of Feinsteinzeug')).toHaveValue('porcelain');
  await dialog().getByLabel('Meaning of Dielenkram').selectOption('vinyl');
  await expect(outcome.getByRole('heading')).toHaveText('3 finishes can be kept');
  await dialog().getByLabel('Meaning of Feinsteinzeug').selectOption('glazed');

  const unknown = dialog().getByText('Columns that were not understood: "Rätsel".');
  await expect(unknown).toBeVisible();
  await dialog().getByText('Columns: 1 of 13 left out').click();
  await dialog().getByLabel('Meaning of Rätsel').selectOption('tags');
  await expect(unknown).toHaveCount(0);
  await expectNoFindings(page, 'dialog.libraries');

  await choose('other.csv', EU);
  await expect(dialog().getByText('Read another file in its place?')).toBeVisible();
  await button('Stay with this one').click();
  await expect(dialog().getByLabel('Meaning of Feinsteinzeug')).toHaveValue('glazed');
  await button(/^Keep 3 finishes/).click();

  await dialog().getByLabel('Order', { exact: true }).selectOption('price');
  await expect(dialog().getByText('One in another currency or for another unit stands apart below')).toBeVisible();
  await expect(rows().first()).toContainText('€49.90 / m²');
  await rows().first().focus();
  await page.keyboard.press('Enter');
  const form = dialog().getByRole('form', { name: 'Travertine look' });
  await expect(form.getByLabel('Price', { exact: true })).toHaveValue('49.90');
  await expect(form.getByLabel('Thickness, mm')).toHaveValue('9');
  await form.getByText('What this number means').click();
  await expect(form.getByText('1 can just be seen side by side')).toBeVisible();
  await expectNoFindings(page, 'dialog.libraries');
  await form.getByLabel('Price', { exact: true }).fill('dear');
  await expect(form.getByText('Price: give one amount, like 34.50.')).toBeVisible();
  await form.getByLabel('Price', { exact: true }).fill('£34.50/sq ft');
  await form.getByLabel('Currency').fill('');
  await form.getByLabel('Price is for').selectOption('');
  await button('Keep the changes').click();
  await expect(dialog().getByText('£34.50 / sq ft')).toBeVisible();
});
