import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { parseProject } from '../../src/io/project-file';
import { drawer, finishes, openAtOnce, prepare, sample, settled, silence } from './page';

// The whole task of somebody with a range of her own, in one go.

/** Three invented paints as a spreadsheet saves them; the names say what they are. */
const RANGE = [
  'code;name;L*;a*;b*;Lichtart;Beobachter;Glanz;price;availability',
  'OWN 1;"Pale yellowish-gray paint, satin";82,4;0,6;6,2;D65;10°;25;$$;In stock',
  'OWN 2;"Dark bluish-gray paint, satin";38,0;-1,5;-5,5;D65;10°;25;$;To order',
  'OWN 3;"Grayish-green paint, flat";60,5;-8,0;7,5;D65;10°;4;$$;In stock',
].join('\r\n');

test('import a range, shortlist, decide, close, reopen, share, undo all', async ({ browser }) => {
  const page = await openAtOnce(browser, { permissions: ['clipboard-read', 'clipboard-write'], acceptDownloads: true });
  const context = page.context();
  const before = readFileSync('demo-data/terrace.project.json', 'utf8');

  await importRange(page);

  await sample(page, 'base-fronts').click();
  const row = finishes(page).locator('[role=option]', { hasText: 'Pale yellowish-gray paint, satin' });
  await drawer(page).getByRole('searchbox').fill('yellowish-gray');
  await expect(row).toContainText('My paints');
  await expect(row).toContainText('Middle price · In stock');
  await row.click();
  await settled(page);
  await drawer(page).getByRole('combobox').first().selectOption('decided');
  await page.keyboard.press('Escape');
  await expect(sample(page, 'base-fronts')).toContainText('decided');
  await expect(page.locator('.bar-kept')).toHaveText('Kept in this browser');

  // A tab that goes without a word loses nothing older than a second.
  await page.waitForTimeout(1000);
  await page.close();
  const again = await context.newPage();
  await prepare(again);
  await again.goto('./');
  await expect(sample(again, 'base-fronts')).toContainText('decided');
  await settled(again);

  await again.getByRole('button', { name: /: projects$/ }).click();
  const panel = again.getByRole('region', { name: 'Projects', exact: true });
  await expect(panel.locator('.project-log li').first()).toContainText('Pale yellowish-gray paint');
  await panel.getByRole('button', { name: 'Make the link' }).click();
  await panel.getByRole('button', { name: 'Copy the link', exact: true }).click();
  const link = await again.evaluate(() => navigator.clipboard.readText());
  const other = await (await browser.newContext()).newPage();
  await silence(other);
  await other.goto(`./${new URL(link).hash}`);
  await expect(sample(other, 'base-fronts')).toContainText('decided');
  await other.context().close();

  const undo = again.getByRole('button', { name: /^Undo/ });
  for (let i = 0; i < 8 && (await undo.isEnabled()); i++) await undo.click();
  await expect(undo).toBeDisabled();
  const saving = again.waitForEvent('download');
  await again.getByRole('button', { name: 'Save', exact: true }).click();
  const saved = parseProject(readFileSync(await (await saving).path(), 'utf8'));
  const demo = parseProject(before);
  expect(saved.ok && demo.ok && saved.value).toEqual(demo.ok && demo.value);
  await context.close();
});

async function importRange(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: 'Libraries…' }).click();
  const dialog = page.locator('dialog.libraries');
  await dialog.getByRole('button', { name: 'Import a file…' }).first().click();
  const file = { name: 'my-paints.csv', mimeType: 'text/csv', buffer: Buffer.from(RANGE) };
  await dialog.locator('.import input[type=file]').first().setInputFiles(file);
  await dialog.getByLabel('Material', { exact: true }).selectOption('paint');
  await dialog.getByLabel('Its name').fill('My paints');
  await dialog.getByRole('button', { name: /^Keep 3 finishes/ }).click();
  await expect(dialog.locator('.range-finish')).toHaveCount(3);
  await dialog.getByRole('button', { name: 'Close' }).first().click();
}
