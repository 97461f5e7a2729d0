import { readFileSync } from 'node:fs';
import { type Browser, type BrowserContext, expect, type Page, test } from '@playwright/test';
import { parseProject } from '../../src/io/project-file';
import { optionAlone } from '../../src/model/option-alone';
import { expectNoFindings } from './axe';
import { silence, watch } from './page';

// The panel of projects, files that are dropped, and links. No light is worked out here: the workers say nothing.

const DEMO = 'demo-data/terrace.project.json';

async function come(context: BrowserContext, fragment = ''): Promise<Page> {
  const page = await context.newPage();
  await silence(page);
  await page.goto(`./${fragment}`);
  await expect(undo(page)).toBeVisible();
  return page;
}

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const panel = (page: Page) => page.getByRole('region', { name: 'Projects', exact: true });
const part = (page: Page, name: string) => panel(page).getByRole('region', { name, exact: true });
const button = (page: Page, name: string) => panel(page).getByRole('button', { name, exact: true });
const title = (page: Page) => page.locator('.bar-project-name');
const sayings = (page: Page) => page.locator('.project-sentences li');
const log = (page: Page) => page.locator('.project-log li > p:nth-child(2)');

async function openPanel(page: Page): Promise<void> {
  await page.getByRole('button', { name: /: projects$/ }).click();
  await expect(panel(page)).toBeFocused();
}

/** Files let go over the page, as from a folder. */
async function drop(page: Page, ...files: readonly { readonly name: string; readonly text: string }[]): Promise<void> {
  const transfer = await page.evaluateHandle((given) => {
    const data = new DataTransfer();
    for (const { name, text } of given) data.items.add(new File([text], name));
    return data;
  }, files);
  await page.dispatchEvent('main', 'dragover', { dataTransfer: transfer });
  await expect(page.locator('.drop-frame')).toContainText('Drop a file to open it');
  await page.dispatchEvent('main', 'drop', { dataTransfer: transfer });
  await expect(page.locator('.drop-frame')).toHaveCount(0);
}

test('a project is named, noted, decided and frozen; what changed is told, gone back from, and all undone', async ({
  context,
}) => {
  const page = await come(context);
  const { problems } = watch(page);
  await openPanel(page);
  await panel(page).getByLabel('Name', { exact: true }).fill('Hill house');
  // The bar follows as it is typed: nothing waits for the field to be left.
  await expect(title(page)).toHaveText('Hill house');
  await page.keyboard.press('Enter');
  await panel(page).getByLabel('Note on Our floor').fill('The owners like this one');
  await part(page, 'Log').getByLabel('New note').fill('Samples came');
  await page.keyboard.press('Enter');
  await expect(log(page)).toHaveText(['Samples came']);

  await page.getByRole('button', { name: /^Next to decide/ }).click();
  await page.getByRole('button', { name: /^Decide: .*backsplash/ }).click();
  await openPanel(page);
  await expect(log(page).first()).toHaveText(/^Backsplash decided: .*TL-01\.$/);

  await part(page, 'Revisions').getByLabel('Name of the revision').fill('As shown');
  await button(page, 'Freeze as it is now').click();
  await expect(log(page).first()).toHaveText('Frozen as R1: As shown.');
  await page.getByRole('button', { name: /^Next to decide/ }).click();
  await page.getByRole('button', { name: /^Reopen: .*backsplash/ }).click();
  await openPanel(page);
  await button(page, 'What changed: R1').click();
  await expect(sayings(page)).toHaveText(['Our floor, the backsplash: open, was decided.']);
  await expectNoFindings(page);
  await button(page, 'Go back to it: R1').click();
  await expect(sayings(page)).toHaveText(['Nothing differs.']);
  await expect(log(page).first()).toHaveText('Went back to R1: As shown.');

  for (let i = 0; i < 12 && (await undo(page).isEnabled()); i++) await undo(page).click();
  await expect(undo(page)).toBeDisabled();
  await expect(title(page)).toHaveText('Terrace kitchen');
  await expect(log(page)).toHaveCount(0);
  expect(problems).toEqual([]);
});

test('projects are copied, opened, removed and brought back', async ({ context }) => {
  const page = await come(context);
  await openPanel(page);
  await panel(page).getByLabel('Name', { exact: true }).fill('First');
  await button(page, 'Copy: First').click();
  const names = part(page, 'In this browser').locator('.project-item:not([data-removed]) > p');
  await expect(names).toHaveCount(2);
  await part(page, 'In this browser')
    .getByRole('button', { name: /^Open: First/ })
    .click();
  await expect(title(page)).not.toHaveText('First');
  await button(page, 'Remove: First').click();
  await expect(names).toHaveCount(1);
  await button(page, 'Bring back: First').click();
  await expect(names).toHaveCount(2);
});

test('after the last project is removed the demo is open and nobody’s own, said so, and all can be brought back', async ({
  context,
}) => {
  const page = await come(context);
  await openPanel(page);
  await expect(part(page, 'In this browser')).toContainText('The demo is open, and nothing of your own is kept here.');
  await panel(page).getByLabel('Name', { exact: true }).fill('Hill house');
  await page.keyboard.press('Enter');
  const items = part(page, 'In this browser').locator('.project-item');
  await expect(items).toHaveCount(1);
  await button(page, 'Remove: Hill house').click();
  await expect(button(page, 'Bring back: Hill house')).toBeFocused();
  await expect(title(page)).toHaveText('Terrace kitchen');
  await expect(items).toHaveText([/^Hill house was removed/]);
  const notice = page.getByRole('status').filter({ hasText: '“Hill house” was removed. This is the demo' });
  await expect(notice).toBeVisible();
  await expectNoFindings(page);
  // It waits also for who closes the panel, and for who dismisses the notice.
  await notice.getByRole('button', { name: 'Dismiss' }).click();
  await button(page, 'Close').click();
  await openPanel(page);
  await button(page, 'Bring back: Hill house').click();
  await expect(title(page)).toHaveText('Hill house');
  await expect(items).toHaveText([/^Hill house open now/]);
  await expect(undo(page)).toHaveAccessibleName('Undo: rename to "Hill house"');
});

test('a revision is removed only after one has been asked, and undone', async ({ context }) => {
  const page = await come(context);
  await openPanel(page);
  await button(page, 'Freeze as it is now').click();
  await button(page, 'Remove…: R1').click();
  await expect(button(page, 'Keep R1')).toBeFocused();
  await expectNoFindings(page);
  await button(page, 'Keep R1').click();
  await button(page, 'Remove…: R1').click();
  await button(page, 'Remove: R1').click();
  await expect(panel(page).getByRole('button', { name: 'Go back to it: R1' })).toHaveCount(0);
  await expect(log(page).first()).toHaveText('Removed R1: Revision 1.');
  await undo(page).click();
  await expect(button(page, 'Go back to it: R1')).toBeVisible();
});

test('what a file was refused for goes once another one is taken, however it comes', async ({ context }) => {
  const page = await come(context);
  const alert = page.getByRole('alert');
  const refuse = async () => {
    await drop(page, { name: 'cut.project.json', text: readFileSync(DEMO, 'utf8').slice(0, 4000) });
    await expect(alert).toContainText('Nothing was changed. The file is not whole: it ends in the middle.');
  };
  const whole = readFileSync(DEMO, 'utf8');
  await refuse();
  await expectNoFindings(page);
  await drop(page, { name: 'a.project.json', text: whole });
  await expect(alert).toHaveCount(0);
  await refuse();
  // The very same once more, by the button, which takes all kinds of files.
  const file = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.locator('input[type=file]').first().setInputFiles(file('a.project.json', whole));
  await expect(alert).toHaveCount(0);
  const color = { kind: 'hex', hex: '#d8cfc0' };
  const colors = [{ role: 'base', share: 1, color, provenance: 'screen' }];
  const surfaces = [{ surface: 'floor', class: 'wood', colors }];
  const look = { type: 'upstand-look', version: 1, id: 'seen', name: 'Seen there', source: 'picture', surfaces };
  await refuse();
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles(file('seen.look.json', JSON.stringify(look)));
  await expect(page.getByRole('status').filter({ hasText: 'The look "Seen there" was taken' })).toBeVisible();
  await expect(alert).toHaveCount(0);
});

test('a dropped file goes where it belongs, or is refused by name', async ({ context }) => {
  const page = await come(context);
  const { problems } = watch(page);
  await drop(page, { name: 'tune.mp3', text: 'la' });
  await expect(page.getByRole('alert')).toContainText('"tune.mp3" is no kind of file this program opens.');
  await drop(page, { name: 'a.csv', text: '' }, { name: 'b.csv', text: '' });
  await expect(page.getByRole('alert')).toContainText('Nothing was changed. 2 files were dropped at once.');
  await drop(page, { name: 'broken.project.json', text: '{ "type": oops }' });
  await expect(page.getByRole('alert')).toContainText('broken.project.json, line 1');
  await expect(undo(page)).toBeDisabled();
  const text = readFileSync(DEMO, 'utf8');
  await drop(page, { name: 'hill.project.json', text: text.replace('"Terrace kitchen"', '"Dropped kitchen"') });
  await expect(title(page)).toContainText('Dropped kitchen');
  await drop(page, { name: 'range.csv', text: 'code;name;L;a;b\nX1;White;90;0;1\n' });
  await expect(page.getByRole('dialog')).toContainText('range.csv');
  expect(problems).toEqual([]);
});

test('a link opens the very option in another browser, and a damaged one nothing', async ({ browser, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const page = await come(context);
  await openPanel(page);
  await part(page, 'Link to this option').getByRole('button', { name: 'Make the link' }).click();
  await expect(panel(page).getByRole('img', { name: 'The link as a QR code' })).toBeVisible();
  await button(page, 'Copy the link').click();
  await expect(part(page, 'Link to this option')).toContainText('Copied.');
  const href = await page.evaluate(() => navigator.clipboard.readText());
  expect(href.length).toBeLessThan(2000);

  const other = await comeBy(browser, href);
  // Where nobody has worked yet it opens without a question, and there is nothing to go back to.
  await expect(other.locator('.option-switch').getByRole('radio')).toHaveCount(1);
  expect(new URL(other.url()).hash).toBe('');
  await expect(other.getByRole('button', { name: /^Back to/ })).toHaveCount(0);
  // Beside work of one's own it is offered.
  await other.evaluate((hash) => {
    window.location.hash = hash;
  }, new URL(href).hash);
  await expect(other.getByRole('dialog', { name: 'A link brings Our floor' })).toBeVisible();
  await expectNoFindings(other);
  await other.getByRole('button', { name: 'Not now' }).click();
  await other.getByRole('button', { name: /: projects$/ }).click();
  const saving = other.waitForEvent('download');
  await button(other, 'Save as a file').click();
  const saved = parseProject(readFileSync(await (await saving).path(), 'utf8'));
  const demo = parseProject(readFileSync(DEMO, 'utf8'));
  if (!saved.ok || !demo.ok) throw new Error('a file could not be read');
  const name = 'Terrace kitchen, Our floor';
  expect(saved.value).toEqual({ ...optionAlone(demo.value, demo.value.options[1]!), name });

  await other.evaluate(
    (hash) => {
      window.location.hash = hash;
    },
    new URL(href).hash.slice(0, -20),
  );
  await expect(other.getByRole('alert')).toContainText('This link is not whole');
  expect(new URL(other.url()).hash).toBe('');
  await other.context().close();
});

async function comeBy(browser: Browser, href: string): Promise<Page> {
  return come(await browser.newContext(), new URL(href).hash);
}
