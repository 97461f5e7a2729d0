import { expect, type Page, test } from '@playwright/test';
import { isEven, pixelAt, type Rgb } from './even-pixels';
import { choose, findings, openPage, reading, refined, type Shot, settled, sharpShot } from './page';
import { readPlace } from './read-place';

// The picture as an eye that notices the light and a daylight camera see it: only the picture changes, and what it shows is still
// what the engine computes. Tolerance: 1 code value of 255, for rounding.

test.describe.configure({ mode: 'serial' });

const EYES = [
  'Eyes used to the light (findings use this)',
  'Eyes that still notice the light',
  'A camera set to daylight',
] as const;
type Eye = (typeof EYES)[number];

let page: Page;

test.beforeAll(async ({ browser }) => {
  const options = { viewport: { width: 1040, height: 760 }, reducedMotion: 'reduce' } as const;
  page = await openPage(browser, options, { fine: true });
  await choose(page, 'Evening');
  await settled(page);
  await refined(page);
});
test.afterAll(() => page.context().close());

async function seeBy(eye: Eye): Promise<void> {
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('radio', { name: eye, exact: true }).check();
  await page.keyboard.press('Escape');
}

test('shows each eye its picture, and every pixel compared is what the engine computes', async () => {
  const said = await findings(page).textContent();
  const places: Record<string, Record<Eye, Rgb>> = {};
  for (const eye of EYES) {
    await seeBy(eye);
    const picture = await sharpShot(page);
    let compared = 0;
    for (const [x, y] of evenPoints(picture, (await page.locator('.stage-foot').boundingBox())!.y)) {
      const read = await readPlace(page, picture.left + x, picture.top + y);
      if (!read || !/-fronts$|^(wall|ceiling|frame|plinth)$/.test(read.surface)) continue;
      const { surface, rgb: engine } = read;
      const pixel = pixelAt(picture, x, y);
      const worst = Math.max(...pixel.map((value, channel) => Math.abs(value - engine[channel]!)));
      expect(worst, JSON.stringify({ eye, surface, pixel, engine })).toBeLessThanOrEqual(1);
      compared++;
      places[`${x} ${y}`] = { ...places[`${x} ${y}`], [eye]: pixel } as Record<Eye, Rgb>;
    }
    expect(compared, eye).toBeGreaterThanOrEqual(4);
    await page.keyboard.press('Escape');
    await expect(reading(page)).toBeHidden();
    // Nothing that is said rests on the eye.
    expect(await findings(page).textContent()).toBe(said);
  }
  // Walls under 3000 K: neutral, a little warm, orange.
  const all = Object.values(places).filter((seen) => EYES.every((eye) => seen[eye]));
  expect(all.length).toBeGreaterThanOrEqual(2);
  for (const seen of all) {
    const [used, notices, camera] = EYES.map((eye) => seen[eye][0] - seen[eye][2]) as [number, number, number];
    expect(notices).toBeGreaterThan(used);
    expect(camera).toBeGreaterThan(notices + 5);
  }
});

test('says whose picture it is, over a picture that stays where it is', async () => {
  await seeBy('A camera set to daylight');
  const notice = page.locator('.stage-picture').getByRole('status').locator('.stage-seen-by');
  await expect(notice).toHaveText(/^Seen by a camera set to daylight/);
  const box = await page.locator('.stage-picture').boundingBox();
  await seeBy('Eyes used to the light (findings use this)');
  await expect(notice).toHaveCount(0);
  expect(await page.locator('.stage-picture').boundingBox()).toEqual(box);
});

const GRID = { across: 22, down: 16 };
const MOST_POINTS = 10;

/** Points of a grid over the picture whose surroundings are even, neither burnt out nor black. */
function evenPoints(picture: Shot, footTop: number): (readonly [x: number, y: number])[] {
  const points: (readonly [number, number])[] = [];
  for (let row = 1; row < GRID.down; row++) {
    for (let column = 0; column < GRID.across; column++) {
      const x = Math.round(((column + 0.5) / GRID.across) * picture.width);
      const y = Math.round(((row + 0.5) / GRID.down) * picture.height);
      const brightest = Math.max(...pixelAt(picture, x, y));
      if (picture.top + y < footTop && brightest <= 250 && brightest >= 4 && isEven(picture, x, y)) points.push([x, y]);
    }
  }
  return points.slice(0, MOST_POINTS);
}
