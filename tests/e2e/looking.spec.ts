import { readFile } from 'node:fs/promises';
import { type CDPSession, expect, type Page, test } from '@playwright/test';
import { PNG } from 'pngjs';
import { expectNoFindings } from './axe';
import { canvas, choose, openPage, refined, settled, sharpen, stillShot } from './page';
import { picturesOnTheWay } from './pictures-on-the-way';
import { soundChunks } from './sound-chunks';

// How one looks at the room: hands, pen and keys, eye height, gray, and the picture as a file.

test.describe.configure({ mode: 'serial' });

let page: Page;
let hands: CDPSession;

test.beforeAll(async ({ browser }) => {
  const options = { reducedMotion: 'reduce', hasTouch: true, acceptDownloads: true } as const;
  page = await openPage(browser, options, { fine: true });
  hands = await page.context().newCDPSession(page);
  await refined(page);
});
test.afterAll(() => page.context().close());

const view = () => page.getByRole('region', { name: 'View', exact: true });
const opener = (name: string) => page.getByRole('button', { name, exact: true });
const picture = () => page.getByRole('img', { name: /^The kitchen as/ });
const height = () => view().getByRole('textbox', { name: /^Eye height/ });
const slider = () => view().getByRole('slider', { name: 'Eye height' });

async function middle(): Promise<{ x: number; y: number }> {
  const box = (await canvas(page).boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 3 };
}

/** What the picture shows is another than before. */
async function expectMoved(act: () => Promise<void>): Promise<void> {
  const before = await stillShot(page);
  await act();
  expect((await stillShot(page)).bytes.equals(before.bytes)).toBe(false);
}

test('the rows at the foot take two lines at most, at every size, and nothing of the picture is lost to what opens', async () => {
  for (const [width, height] of [
    [1280, 800],
    [820, 1180],
  ] as const) {
    await page.setViewportSize({ width, height });
    const rows = page.locator('.stage-foot');
    // The highest control is a row of choices: targets within a border.
    const inside = await rows.evaluate((foot) =>
      Number.parseFloat(getComputedStyle(foot).getPropertyValue('--target-inside')),
    );
    // Two lines of controls, what lies between them, and the edge: 92 px where targets have 36 px.
    const most = 2 * (inside + 2) + 4 + 16;
    expect((await rows.boundingBox())!.height).toBeLessThanOrEqual(most);
    await opener('Light').click();
    expect((await rows.boundingBox())!.height).toBeLessThanOrEqual(most);
    await page.keyboard.press('Escape');
  }
  await page.setViewportSize({ width: 1280, height: 800 });
});

test('eyes go up and down by keys on the slider, and choosing the place again brings them back', async () => {
  await opener('View').click();
  await expect(height()).toHaveValue('1600');
  await slider().focus();
  await expectMoved(async () => {
    for (let presses = 0; presses < 20; presses++) await page.keyboard.press('ArrowLeft');
  });
  await expect(height()).toHaveValue('1400');
  await expect(slider()).toHaveAttribute('aria-valuetext', '1400 mm');
  // 1400 / 25.4 = 55.118 inches, to a sixteenth.
  await choose(page, 'inch');
  await expect(height()).toHaveValue('55 1/8');
  await height().fill('63');
  await height().press('Enter');
  await choose(page, 'mm');
  await expect(height()).toHaveValue('1600');
  await height().fill('2600');
  await height().press('Enter');
  await expect(view().getByRole('alert')).toContainText('between 900 and 2000 mm');
  await height().fill('1600');
  await height().press('Enter');
  await choose(page, 'Seated');
  await expect(height()).toHaveValue('1200');
  await choose(page, 'By the place');
  await expect(height()).toHaveValue('1600');
});

test('keys in the picture turn, walk and lift; the panel says so, and one goes back', async () => {
  const start = await stillShot(page);
  await picture().focus();
  for (const key of ['ArrowLeft', 'Shift+ArrowUp', 'Shift+ArrowRight', 'PageDown', '+']) {
    await expectMoved(() => page.keyboard.press(key));
  }
  await expect(view()).toContainText('The eye has moved');
  await view().getByRole('button', { name: 'Back to the place' }).click();
  await expect(view()).not.toContainText('The eye has moved');
  expect((await stillShot(page)).bytes.equals(start.bytes)).toBe(true);
});

test('one finger turns, two move and pinch', async () => {
  const { x, y } = await middle();
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: readonly (readonly [number, number])[]) =>
    hands.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: points.map(([px, py], id) => ({ x: px, y: py, id })),
    });
  await expectMoved(async () => {
    await touch('touchStart', [x, y]);
    for (let step = 1; step <= 5; step++) await touch('touchMove', [x + 16 * step, y]);
    await touch('touchEnd');
  });
  // A finger that rolls by less than 10 px reads a point, it does not turn.
  const place = await stillShot(page);
  await expectMoved(async () => {
    await touch('touchStart', [x - 60, y], [x + 60, y]);
    for (let step = 1; step <= 5; step++) await touch('touchMove', [x - 60, y - 8 * step], [x + 60, y - 8 * step]);
    await touch('touchEnd');
  });
  await expectMoved(async () => {
    await touch('touchStart', [x - 40, y], [x + 40, y]);
    for (let step = 1; step <= 5; step++) await touch('touchMove', [x - 40 - 10 * step, y], [x + 40 + 10 * step, y]);
    await touch('touchEnd');
  });
  expect(place.bytes.length).toBeGreaterThan(0);
  await page.keyboard.press('1');
});

test('the pen turns like a finger; hovering with it changes nothing', async () => {
  const { x, y } = await middle();
  const pen = (type: 'mouseMoved' | 'mousePressed' | 'mouseReleased', px: number, pressed: boolean) =>
    hands.send('Input.dispatchMouseEvent', {
      type,
      x: px,
      y,
      pointerType: 'pen',
      button: type === 'mouseMoved' && !pressed ? 'none' : 'left',
      buttons: pressed ? 1 : 0,
      clickCount: 1,
    });
  const types = page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        document.querySelector('canvas')!.addEventListener('pointerdown', (event) => resolve(event.pointerType), {
          once: true,
        });
      }),
  );
  const before = await stillShot(page);
  await pen('mouseMoved', x, false);
  await pen('mouseMoved', x + 40, false);
  expect((await stillShot(page)).bytes.equals(before.bytes)).toBe(true);
  await expectMoved(async () => {
    await pen('mousePressed', x, true);
    for (let step = 1; step <= 5; step++) await pen('mouseMoved', x + 12 * step, true);
    await pen('mouseReleased', x + 60, false);
  });
  expect(await types).toBe('pen');
  await page.keyboard.press('1');
});

test('less motion: from one place to another there is no picture in between', async () => {
  const atOnce = await picturesOnTheWay(page);
  expect(atOnce).toBeGreaterThan(0);
  // The place gone to, and perhaps the same once more when its mirrors are ready.
  expect(atOnce).toBeLessThanOrEqual(2);
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await page.waitForFunction(() => !matchMedia('(prefers-reduced-motion: reduce)').matches);
  await stillShot(page);
  // So that one knows that a flight would have been seen.
  expect(await picturesOnTheWay(page)).toBeGreaterThan(atOnce);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.keyboard.press('1');
});

test('in gray every pixel is neutral, a notice says so, and one press brings the colors back', async () => {
  await settled(page);
  await sharpen(page);
  await choose(page, 'Gray');
  const notice = page.locator('.stage-mode');
  await expect(notice).toContainText('Shown in gray.');
  const off = () =>
    page.locator('.stage-notes').evaluate((notes: HTMLElement) => notes.style.setProperty('opacity', '0'));
  await off();
  const { bytes } = await stillShot(page);
  let colored = 0;
  for (let i = 0; i < bytes.length; i += 4) {
    if (Math.max(bytes[i]!, bytes[i + 1]!, bytes[i + 2]!) - Math.min(bytes[i]!, bytes[i + 1]!, bytes[i + 2]!) > 0)
      colored++;
  }
  expect(colored).toBe(0);
  await page.locator('.stage-notes').evaluate((notes: HTMLElement) => notes.style.removeProperty('opacity'));
  await expectNoFindings(page);
  await choose(page, 'Steps of lightness');
  await view().getByRole('checkbox', { name: 'Mark what is too bright' }).check();
  await expect(notice).toContainText('ten steps of lightness');
  await expect(notice).toContainText('Close stripes');
  await expectNoFindings(page);
  await notice.getByRole('button', { name: 'Show it in color' }).click();
  await expect(notice).toHaveCount(0);
  await expect(view().getByRole('radio', { name: 'Color', exact: true })).toBeChecked();
});

test('a kept picture is a sound PNG file with the very pixels on screen and what it is of', async () => {
  await refined(page);
  await choose(page, '1\u00d7');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    view().getByRole('button', { name: 'Save picture' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('kitchen-terrace-kitchen-our-floor-day-overcast.png');
  await expect(view().getByText(/^Saved as /)).toBeVisible();
  const file = await readFile(await download.path());
  expect(soundChunks(file)).toEqual([
    'IHDR',
    'sRGB',
    'gAMA',
    'cHRM',
    'cICP',
    'pHYs',
    'iTXt',
    'iTXt',
    'iTXt',
    'iTXt',
    'IDAT',
    'IEND',
  ]);

  const png = PNG.sync.read(file);
  await page.locator('.stage-notes').evaluate((notes: HTMLElement) => notes.style.setProperty('opacity', '0'));
  const shown = await stillShot(page);
  expect(png.width).toBe(shown.width);
  expect(png.height).toBeGreaterThan(shown.height + 60);
  let differing = 0;
  for (let y = 0; y < shown.height; y++) {
    for (let i = 4 * y * shown.width; i < 4 * (y + 1) * shown.width; i++)
      if (png.data[i] !== shown.bytes[i]) differing++;
  }
  expect(differing).toBe(0);
  // The band below: black letters on white, nothing between but gray.
  const band = png.data.subarray(4 * png.width * shown.height);
  expect(band.some((value, i) => i % 4 === 0 && value < 64)).toBe(true);
  let tinted = 0;
  for (let i = 0; i < band.length; i += 4) if (band[i] !== band[i + 1] || band[i] !== band[i + 2]) tinted++;
  expect(tinted).toBe(0);

  await choose(page, '2\u00d7');
  const [large] = await Promise.all([
    page.waitForEvent('download'),
    view().getByRole('button', { name: 'Save picture' }).click(),
  ]);
  expect(PNG.sync.read(await readFile(await large.path())).width).toBe(2 * shown.width);
});

test('holding a light shows it for as long as it is held, by finger and by L; holding the option switch by pen', async () => {
  const evening = page.locator('.foot-settings .choice:has(input)', { hasText: 'Evening' });
  const checked = page.getByRole('radiogroup', { name: 'Light setting' }).getByRole('radio', { checked: true });
  const box = (await evening.boundingBox())!;
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2, id: 1 };
  await hands.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
  await expect(checked).toHaveAccessibleName('Evening');
  await expect(page.locator('.stage-note').filter({ hasText: 'Showing Evening while you hold' })).toBeVisible();
  await hands.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await expect(checked).toHaveAccessibleName('Day, overcast');

  await choose(page, 'Evening');
  await choose(page, 'Day, overcast');
  await page.keyboard.down('l');
  await expect(checked).toHaveAccessibleName('Evening');
  await page.keyboard.up('l');
  await expect(checked).toHaveAccessibleName('Day, overcast');

  const options = page.locator('.option-switch');
  const place = (await options.boundingBox())!;
  const pen = (type: 'mousePressed' | 'mouseReleased') =>
    hands.send('Input.dispatchMouseEvent', {
      type,
      x: place.x + place.width * 0.75,
      y: place.y + place.height / 2,
      pointerType: 'pen',
      button: 'left',
      buttons: type === 'mousePressed' ? 1 : 0,
      clickCount: 1,
    });
  await pen('mousePressed');
  await expect(options).toHaveClass(/is-holding/);
  await pen('mouseReleased');
  await expect(options).not.toHaveClass(/is-holding/);
  const finger = { x: place.x + place.width * 0.75, y: place.y + place.height / 2, id: 2 };
  await hands.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [finger] });
  await expect(options).toHaveClass(/is-holding/);
  await hands.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await expect(options).not.toHaveClass(/is-holding/);
  await expect(page.getByRole('radio', { name: 'Our floor', exact: true })).toBeChecked();
});

test('side by side both halves turn together under one finger', async () => {
  await page.keyboard.press('s');
  await expect(page.locator('.stage-halves')).toBeVisible();
  await settled(page);
  const before = await stillShot(page);
  const box = (await canvas(page).boundingBox())!;
  const [x, y] = [box.x + box.width / 4, box.y + box.height / 3];
  await hands.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  for (let step = 1; step <= 5; step++) {
    await hands.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x: x + 16 * step, y }] });
  }
  await hands.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  const after = await stillShot(page);
  const changed = (from: number, to: number) => {
    let count = 0;
    for (let row = 0; row < after.height; row += 4) {
      for (let column = Math.round(from * after.width); column < to * after.width; column += 4) {
        const i = 4 * (row * after.width + column);
        if (Math.abs(after.bytes[i]! - before.bytes[i]!) > 8) count++;
      }
    }
    return count / ((after.height / 4) * ((to - from) * after.width) * 0.25);
  };
  expect(changed(0.02, 0.48)).toBeGreaterThan(0.05);
  expect(changed(0.52, 0.98)).toBeGreaterThan(0.05);
  await page.keyboard.press('s');
});
