import { expect, type Page, test } from '@playwright/test';
import { isEven, pixelAt, type Rgb } from './even-pixels';
import { choose, openAtOnce, reading, refined, type Shot, settled, sharpShot } from './page';
import { readPlace } from './read-place';

// The picture is the engine's light, pixel for pixel: at points all over the room the pixel on screen is compared with what
// the light worker computes there by its own code in double precision. Tolerance: 1 code value of 255, for rounding.
//
// A pixel at a distance covers many texels of a pattern; the graphics card averages them, the engine reads one spot. So
// points lie where the picture is even over 7 x 7 pixels, and on surfaces with a pattern only in the close viewpoints.

test.describe.configure({ mode: 'serial' });

const PLAIN = /-fronts$|^(wall|ceiling|frame|plinth)$/;
/** Streaks half a millimeter wide, which no view shows one by one. */
const BRUSHED = /^(appliance|sink|faucet|hardware)$/;
const DOORWAY = { name: 'From the doorway', close: false };
const SEATED = { name: 'Seated at the island', close: true };
const CORNER = { name: 'Close on the corner', close: true };
type View = typeof DOORWAY;

/** Where each setting is looked at from: every view by day and by night, each two of them once more together. */
const SETTINGS: readonly { readonly id: string; readonly name?: string; readonly views: readonly View[] }[] = [
  { id: 'day', views: [DOORWAY, CORNER] },
  { id: 'clear', name: 'Clear, afternoon', views: [SEATED, CORNER] },
  { id: 'evening', name: 'Evening', views: [DOORWAY, SEATED] },
  { id: 'dinner', name: 'Dinner', views: [SEATED, CORNER] },
];

interface Compared {
  readonly where: string;
  readonly surface: string;
  readonly pixel: Rgb;
  readonly engine: Rgb;
}

let page: Page;

test.beforeAll(async ({ browser }) => {
  const options = { viewport: { width: 1180, height: 720 }, reducedMotion: 'reduce' } as const;
  page = await openAtOnce(browser, options, { pixels: true, fine: true });
  // What the engine computes is without it. Before there is a picture: its shaders are not built then.
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('checkbox', { name: 'Sheen in the picture' }).uncheck();
  await page.keyboard.press('Escape');
});
test.afterAll(() => page.context().close());

for (const { id, name, views } of SETTINGS) {
  test(`every pixel compared is what the engine computes: ${id}`, async () => {
    if (name) await choose(page, name);
    await settled(page);
    await refined(page);
    const compared: Compared[] = [];
    for (const view of views) {
      await choose(page, view.name);
      compared.push(...(await compareView(view)));
    }
    const luminances = compared.map(({ engine }) => luminance(engine));
    expect(compared.length).toBeGreaterThanOrEqual(8);
    expect(new Set(compared.map(({ surface }) => surface)).size).toBeGreaterThanOrEqual(4);
    expect(Math.max(...luminances) / Math.min(...luminances)).toBeGreaterThan(5);
  });
}

async function compareView({ name, close }: View): Promise<Compared[]> {
  await closeReading();
  const picture = await sharpShot(page);
  // The rows at the picture's foot take the clicks there.
  const foot = (await page.locator('.stage-foot').boundingBox())!;
  const compared: Compared[] = [];
  for (const [x, y] of evenPoints(picture, foot.y)) {
    // In the middle of the pixel: its corner may lie on the face next to it, where a bevel is two pixels wide.
    const read = await readPlace(page, picture.left + x + 0.5, picture.top + y + 0.5);
    if (!read || BRUSHED.test(read.surface) || (!close && !PLAIN.test(read.surface))) continue;
    const { surface, rgb: engine } = read;
    const one = { where: `${name}, ${x}, ${y}`, surface, pixel: pixelAt(picture, x, y), engine };
    expect(worstOf(one), JSON.stringify(one)).toBeLessThanOrEqual(1);
    compared.push(one);
  }
  return compared;
}

async function closeReading(): Promise<void> {
  await page.keyboard.press('Escape');
  await expect(reading(page)).toBeHidden();
}

const GRID = { across: 30, down: 18 };
const MOST_POINTS = 7;

/** Points of a grid over the picture whose surroundings are even, neither burnt out nor black. */
function evenPoints(picture: Shot, footTop: number): (readonly [x: number, y: number])[] {
  const points: (readonly [number, number])[] = [];
  for (let row = 0; row < GRID.down; row++) {
    for (let column = 0; column < GRID.across; column++) {
      const x = Math.round(((column + 0.5) / GRID.across) * picture.width);
      const y = Math.round(((row + 0.5) / GRID.down) * picture.height);
      if (picture.top + y >= footTop) continue;
      const center = pixelAt(picture, x, y);
      if (Math.max(...center) > 250 || Math.max(...center) < 4) continue;
      // A bevel in the dark stands out by 2 code values, and a pixel on its edge shows both faces.
      if (isEven(picture, x, y, 1)) points.push([x, y]);
    }
  }
  // Evenly thinned out: every point costs a click and a frame.
  const step = Math.max(1, points.length / MOST_POINTS);
  return points.filter((_, index) => Math.floor(index / step) !== Math.floor((index - 1) / step));
}

const worstOf = ({ pixel, engine }: Compared): number =>
  Math.max(...pixel.map((value, channel) => Math.abs(value - engine[channel]!)));

/** Relative luminance of sRGB bytes (IEC 61966-2-1). */
function luminance(rgb: Rgb): number {
  const [r, g, b] = rgb.map((byte) => {
    const value = byte / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
