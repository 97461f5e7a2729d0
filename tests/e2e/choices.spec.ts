import { expect, type Page, test } from '@playwright/test';
import { canvas, choose, openPage, option, type Shot, sample, settled, stillShot } from './page';

test.describe.configure({ mode: 'serial' });

let page: Page;
test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' }, { picture: true });
});
test.afterAll(() => page.context().close());

/** Share of pixels that differ visibly: light that is still refined changes them by less. */
function differing(a: Shot, b: Shot): number {
  let count = 0;
  for (let i = 0; i < a.bytes.length; i += 4) {
    if ([0, 1, 2].some((channel) => Math.abs(a.bytes[i + channel]! - b.bytes[i + channel]!) > 12)) count++;
  }
  return count / (a.bytes.length / 4);
}

test('choosing the place one looks from once more, after turning, looks from there again', async () => {
  const place = page.getByRole('radiogroup', { name: 'Viewpoint' }).locator('.choice').first();
  await expect(place.getByRole('radio')).toBeChecked();
  const before = await stillShot(page);
  const box = (await canvas(page).boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 3);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + 150, box.y + box.height / 3 + 20, { steps: 5 });
  await page.mouse.up();
  expect(differing(await stillShot(page), before)).toBeGreaterThan(0.1);
  await place.click();
  expect(differing(await stillShot(page), before)).toBeLessThan(0.02);
});

test('a hold that ended off the switch leaves the next choice by keyboard alone', async () => {
  await choose(page, 'Our floor');
  const box = (await page.locator('.option-switch').boundingBox())!;
  await page.mouse.move(box.x + box.width * 0.75, box.y + box.height / 2);
  await page.mouse.down();
  await expect(page.locator('.option-switch')).toHaveClass(/is-holding/);
  await page.mouse.move(box.x + box.width / 2, box.y + box.height + 200);
  await page.mouse.up();
  await expect(page.locator('.option-switch')).not.toHaveClass(/is-holding/);
  await option(page, 'Our floor').focus();
  await page.keyboard.press('ArrowLeft');
  await expect(option(page, 'Copied look')).toBeChecked();
  await choose(page, 'Our floor');
  await settled(page);
});

test('a slider moved by keys takes one step to undo for each time a key is held', async () => {
  const lamp = page.getByRole('slider', { name: 'Lamp color' });
  const undo = page.getByRole('button', { name: /^Undo/ });
  await lamp.focus();
  const before = await lamp.inputValue();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(lamp).not.toHaveValue(before);
  await undo.click();
  expect(Number(await lamp.inputValue())).toBe(Number(before) + 1);
  await undo.click();
  await expect(lamp).toHaveValue(before);
  await expect(sample(page, 'floor')).toBeVisible();
});
