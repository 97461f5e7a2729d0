import { expect, type Page, test } from '@playwright/test';
import { canvas, choose, openPage, option, refined, type Shot, sentence, settled, stillShot } from './page';

// The light is refined for a while after the findings are complete, which changes the picture, too: what compares pictures
// is tried again until no refinement came in between.

test.describe.configure({ mode: 'serial' });

let page: Page;
const said = { ours: '', copied: '' };

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' }, { fine: true });
  await choose(page, 'Copied look');
  await settled(page);
  said.copied = (await sentence(page).textContent())!;
  await choose(page, 'Our floor');
  await settled(page);
  said.ours = (await sentence(page).textContent())!;
  expect(said.ours).not.toBe(said.copied);
  await refined(page);
});
test.afterAll(() => page.context().close());

type Part = readonly [from: number, to: number];
const WHOLE: Part = [0, 1];

/** Share of pixels that differ by more than 2 code values in a channel. */
function differing(a: Shot, b: Shot, [aFrom, aTo]: Part = WHOLE, [bFrom]: Part = WHOLE): number {
  expect([a.width, a.height]).toEqual([b.width, b.height]);
  const width = Math.round((aTo - aFrom) * a.width);
  let count = 0;
  for (let y = 0; y < a.height; y++) {
    for (let x = 0; x < width; x++) {
      const i = 4 * (y * a.width + Math.round(aFrom * a.width) + x);
      const j = 4 * (y * b.width + Math.round(bFrom * b.width) + x);
      if ([0, 1, 2].some((channel) => Math.abs(a.bytes[i + channel]! - b.bytes[j + channel]!) > 2)) count++;
    }
  }
  return count / (a.height * width);
}

/** Holds, looks, lets go: the other option and then the same picture as before. */
async function expectHeld(hold: () => Promise<void>, release: () => Promise<void>): Promise<void> {
  await expect(async () => {
    const ours = await stillShot(page);
    await hold();
    try {
      await expect(sentence(page)).toHaveText(said.copied);
      const held = await stillShot(page);
      expect(differing(held, ours)).toBeGreaterThan(0.02);
    } finally {
      await release();
    }
    await expect(sentence(page)).toHaveText(said.ours);
    await expect(option(page, 'Our floor')).toBeChecked();
    expect(differing(await stillShot(page), ours)).toBeLessThan(0.001);
  }).toPass();
}

test('pressing and holding the switch shows the other option until it is let go', async () => {
  const box = (await page.locator('.option-switch').boundingBox())!;
  await page.mouse.move(box.x + box.width * 0.75, box.y + box.height / 2);
  await expectHeld(
    () => page.mouse.down(),
    () => page.mouse.up(),
  );
});

test('holding the key O does the same', async () => {
  await expectHeld(
    () => page.keyboard.down('o'),
    () => page.keyboard.up('o'),
  );
});

test('side by side has both halves, and afterwards the picture is as large and as it was', async () => {
  const place = await canvas(page).boundingBox();
  await expect(async () => {
    const before = await stillShot(page);
    await page.keyboard.press('s');
    await expect(page.locator('.stage-halves span')).toHaveText(['Copied look', 'Our floor']);
    const split = await stillShot(page);
    await page.keyboard.press('s');
    await expect(page.locator('.stage-halves')).toHaveCount(0);
    // Both halves look from the same place, so that what differs between them is the floor, not the room.
    const between = differing(split, split, [0.01, 0.49], [0.51, 0.99]);
    expect(between).toBeGreaterThan(0.02);
    await expect.poll(() => canvas(page).boundingBox()).toEqual(place);
    expect(differing(await stillShot(page), before)).toBeLessThan(0.001);
  }).toPass();
});
