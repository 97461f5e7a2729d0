import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { isEven, pixelAt } from './even-pixels';
import { choose, colorCount, openPage, reading, refined, sharpShot, stillShot } from './page';
import { readPlace } from './read-place';

test.describe.configure({ mode: 'serial' });

let page: Page;

test.beforeAll(async ({ browser }) => {
  const options = { viewport: { width: 1400, height: 1000 }, reducedMotion: 'reduce' } as const;
  page = await openPage(browser, options, { fine: true });
  await refined(page);
});
test.afterAll(() => page.context().close());

const note = () => page.locator('.stage-note').first();
const picture = () => page.getByRole('img', { name: /^The samples of / });
const input = () => reading(page).getByLabel('A white, or a finish by name');

/** Places of the picture that are even, with the pixel there. */
async function evenPlaces(most: number) {
  const shot = await sharpShot(page);
  const foot = (await page.locator('.stage-foot').boundingBox())!;
  const places = [];
  for (let row = 2; row < 20; row++) {
    for (let column = 2; column < 30; column++) {
      const [x, y] = [Math.round((column / 32) * shot.width), Math.round((row / 22) * shot.height)];
      if (shot.top + y < foot.y && isEven(shot, x, y))
        places.push({ x: shot.left + x, y: shot.top + y, pixel: pixelAt(shot, x, y) });
    }
  }
  const step = Math.max(1, Math.floor(places.length / most));
  return places.filter((_, i) => i % step === 0);
}

const figures = (text: string) =>
  text
    .match(/rgb\((\d+), (\d+), (\d+)\)/)!
    .slice(1)
    .map(Number);

test('the stand stands in for the room and says what lying and standing do', async () => {
  await choose(page, 'Sample stand');
  await expect(picture()).toBeVisible();
  await refined(page);
  await expect(note()).toHaveText(
    /^Flat, the counter sample reads L\* [\d.]+ (lighter|darker) than the same piece upright\.$/,
  );
  expect(colorCount(await stillShot(page))).toBeGreaterThan(60);
  await expectNoFindings(page);
});

test('a pixel of a sample is what the engine computes there, and the card tells it lying and standing', async () => {
  const surfaces = new Set<string>();
  for (const { x, y, pixel } of await evenPlaces(24)) {
    const read = await readPlace(page, x, y);
    // What has a pattern shows a mean of it at a distance.
    if (!read || !/-fronts$|^(wall|ceiling)$/.test(read.surface)) continue;
    const { surface, rgb: engine } = read;
    surfaces.add(surface);
    for (let k = 0; k < 3; k++) expect(Math.abs(pixel[k]! - engine[k]!), `${surface} ${x} ${y}`).toBeLessThanOrEqual(1);
    await expect(reading(page)).toContainText('On the sample stand');
    await expect(reading(page)).toContainText('What stands gets');
  }
  expect(surfaces.size).toBeGreaterThanOrEqual(2);
});

test('all in one plane misleads, and the page says by how much', async () => {
  await page.keyboard.press('Escape');
  await choose(page, 'All flat');
  await refined(page);
  await expect(note()).toHaveText(
    /^All flat misleads: the .* sample reads L\* [\d.]+ (lighter|darker) here than it will standing\.$/,
  );
  await choose(page, 'All upright');
  await refined(page);
  await expect(note()).toHaveText(/^All upright misleads: .* than it will lying\.$/);
  await choose(page, 'White');
  await refined(page);
  // A place beside all samples: white now.
  const shot = await stillShot(page);
  const [r, g, b] = pixelAt(shot, Math.round(0.05 * shot.width), Math.round(0.5 * shot.height));
  expect(Math.max(r, g, b) - Math.min(r, g, b)).toBeLessThan(12);
  await choose(page, 'Gray');
  await choose(page, 'As in the room');
  await refined(page);
});

test('two options stand side by side, and the room comes back', async () => {
  await page.getByRole('button', { name: 'Side by side' }).click();
  await expect(page.getByRole('img', { name: /^Samples on a stand, as in the room, day light: left / })).toBeVisible();
  await page.getByRole('button', { name: 'Side by side' }).click();
  await choose(page, 'Room');
  await expect(page.getByRole('img', { name: /^The kitchen as/ })).toBeVisible();
  await refined(page);
});

test('a comparison white is held at a place in the color the card says, and Esc puts it away', async () => {
  await choose(page, 'Standing at the counter');
  const places = await evenPlaces(40);
  let held = 0;
  for (const { x, y } of places) {
    await page.mouse.click(x, y);
    const found = await input()
      .waitFor({ timeout: 1500 })
      .then(
        () => true,
        () => false,
      );
    if (!found) continue;
    const surface = await reading(page)
      .getByRole('combobox', { name: /^Surface/ })
      .inputValue();
    if (!/^(wall|tall-fronts|wall-fronts)$/.test(surface)) continue;
    await input().fill('Cream');
    const card = reading(page).getByRole('region', { name: 'Hold beside it' });
    await expect(card).toContainText(/Cream looks \w+ than the|look the same here/);
    await expect(card).toContainText('dE00');
    const shown = figures((await card.getByText(/^rgb\(/).textContent())!);
    const pixel = pixelAt(await sharpShot(page), ...(await inPicture(x, y)));
    const apart = pixel.map((value, k) => Math.abs(value - shown[k]!));
    // Where the card slid away from an edge, the place itself is beside it.
    if (Math.max(...apart) > 30) continue;
    expect(Math.max(...apart), `${surface} ${x} ${y}`).toBeLessThanOrEqual(1);
    held++;
    await input().press('Escape');
    await expect(card).toContainText('A perfect white is held there now.');
    if (held === 3) break;
  }
  expect(held).toBe(3);
});

test('any finish is found by a word of its name, by keys, and one that is not there is said', async () => {
  await input().fill('walnut');
  await input().press('Enter');
  await expect(input()).toHaveValue(/walnut/i);
  const card = reading(page).getByRole('region', { name: 'Hold beside it' });
  await expect(card).toContainText('100 by 150 mm');
  await expect(card).toContainText('Side by side');
  await input().fill('no such finish');
  await expect(card).toContainText('Nothing here has that name');
  await expectNoFindings(page);
  await card.getByRole('button', { name: 'Put away' }).click();
  await expect(card).toContainText('A perfect white is held there now.');
});

async function inPicture(x: number, y: number): Promise<readonly [number, number]> {
  const box = (await page.locator('section[aria-label="Picture"] canvas').boundingBox())!;
  return [x - Math.ceil(box.x), y - Math.ceil(box.y)];
}
