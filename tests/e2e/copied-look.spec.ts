import { expect, type Page, test } from '@playwright/test';
import { PNG } from 'pngjs';
import { expectNoFindings } from './axe';
import { openPage } from './page';

let page: Page;
test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' });
});
test.afterAll(() => page.context().close());

/** A picture in bands: wall, counter, fronts, floor. Colors are invented. */
function bands(): Buffer {
  const png = new PNG({ width: 400, height: 400 });
  const colors = [
    [232, 231, 228],
    [222, 222, 223],
    [20, 84, 84],
    [205, 177, 136],
  ];
  for (let i = 0; i < 400 * 400; i++) {
    const [r, g, b] = colors[Math.floor(i / 400 / 100)]!;
    png.data.set([r!, g!, b!, 255], 4 * i);
  }
  return PNG.sync.write(png);
}

const panel = () => page.getByRole('region', { name: 'Copied look', exact: true });
const dialog = () => page.getByRole('dialog', { name: 'Look from a picture' });
const picture = (name: string, buffer: Buffer) =>
  page.locator('input[type=file][accept^="image/"]').setInputFiles({ name, mimeType: 'image/png', buffer });

test('a look from points on a picture is kept as relations, carried over, and tells what breaks', async () => {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: 'Copied look' }).click();
  await expect(panel()).toBeFocused();

  // What is no picture changes nothing.
  await picture('broken.png', Buffer.from('no picture at all'));
  await expect(page.getByText(/broken\.png/)).toBeVisible();
  await expect(dialog()).toBeHidden();

  await picture('kitchen.png', bands());
  const sheet = dialog().getByRole('img', { name: 'Picture' });
  const { x, y, width, height } = (await sheet.boundingBox())!;
  const surfaces = ['Wall', 'Counter', 'Cabinet fronts', 'Floor'];
  for (const [i, surface] of surfaces.entries()) {
    if (i < 3) await page.mouse.click(x + width / 2, y + (height * (i + 0.5)) / 4);
    else {
      // The last one by keys: from the middle down into the floor.
      await dialog().getByRole('button', { name: 'Add a point' }).press('Enter');
      for (let k = 0; k < 8; k++) await page.keyboard.press('Shift+ArrowDown');
    }
    await dialog().getByLabel('Stands on').nth(i).selectOption({ label: surface });
  }
  const yielded = dialog().getByRole('region', { name: 'Relations it yields' });
  await expect(yielded.getByText(/The floor is clearly lighter than the fronts/)).toBeVisible({ timeout: 15_000 });
  await expectNoFindings(page);
  await dialog().getByRole('button', { name: 'Keep this look' }).click();
  await expect(dialog()).toBeHidden();

  await expect(panel().getByLabel('The look', { exact: true })).toHaveValue('look:look-1');
  await expect(panel().getByText(/relations break, \d+ hold/)).toBeVisible();
  await expect(panel().getByText(/Here the floor is cool and stays, so nothing warm is left/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Undo: add look "Look from a picture"' })).toBeEnabled();

  await expectNoFindings(page);

  await panel().getByRole('button', { name: 'Lay as a new option' }).click();
  await expect(page.getByRole('radio', { name: 'Look from a picture, carried' })).toBeChecked();
});
