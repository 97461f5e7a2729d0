import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { openPage, watch } from './page';

// Files of 50 MB and more. That the page goes on answering is shown by what can be done on it while one is read.

const folder = mkdtempSync(join(tmpdir(), 'upstand-'));
let page: Page;
test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' }, { dark: true });
});
test.afterAll(async () => {
  await page.context().close();
  rmSync(folder, { recursive: true });
});

const MB = 2 ** 20;

/** A file of more than 50 MB: a piece again and again. */
function hugeFile(name: string, head: string, piece: string, tail = ''): string {
  const path = join(folder, name);
  writeFileSync(path, head + piece.repeat(Math.ceil((50 * MB) / piece.length)) + tail);
  return path;
}

const bring = (path: string) => page.locator('input[type=file]').first().setInputFiles(path);
const dialog = () => page.locator('dialog.libraries');

test('while a file of 50 MB is read one can give it up, and the page is as it was', async () => {
  const { problems } = watch(page);
  const object = '<cc:Object ObjectType="Standard" Name="a" Id="c1"><cc:ColorValues/></cc:Object>';
  const collection = 'xmlns:cc="http://colorexchangeformat.com/CxF3-core"><cc:Resources><cc:ObjectCollection>';
  await bring(hugeFile('range.cxf', `<cc:CxF ${collection}`, object, '</cc:ObjectCollection></cc:Resources></cc:CxF>'));
  await dialog().getByRole('button', { name: 'Cancel' }).click();
  await expect(dialog().getByText('A table (CSV')).toBeVisible();
  await expect(dialog().getByRole('button', { name: 'Cancel' })).toHaveCount(0);
  await page.keyboard.press('Escape');
  await expect(dialog()).toBeHidden();
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
  expect(problems).toEqual([]);
});

test('files of 50 MB are refused in words, and nothing is changed', async () => {
  const { problems } = watch(page);
  for (const [path, words] of [
    [hugeFile('table.csv', 'code,name,L,a,b\n', 'A1,A stone of a long list,50.5,1,2\n'), 'more than 100,000 rows'],
    [hugeFile('project.json', '{"upstand":"project","note":"', 'x', '"}'), 'a project has far less'],
    [hugeFile('photo.bin', '', '\0'), 'no kind of file this program opens'],
  ] as const) {
    await bring(path);
    const told = page.getByRole('alert').filter({ hasText: words });
    await expect(told).toBeVisible();
    await expect(told).toContainText('Nothing was changed');
    if (await dialog().isVisible()) await page.keyboard.press('Escape');
    await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
  }
  expect(problems).toEqual([]);
});
