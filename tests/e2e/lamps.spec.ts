import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { choose, findings, openPage, refined, settled, stillShot } from './page';

test.describe.configure({ mode: 'serial' });

let page: Page;

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' }, { fine: true });
  await choose(page, 'Evening');
  // The demo's pendants have a lamp of their own: the same everywhere to begin with.
  const color = page.getByRole('slider', { name: 'Lamp color' });
  await color.fill('0');
  await color.fill('1');
  await settled(page);
});
test.afterAll(() => page.context().close());

/** What the lamps are, beside their slider in the rows. */
const lampName = () => page.locator('.stage-foot .lamp-name');
const opener = () => page.getByRole('button', { name: 'Light', exact: true });
const panel = () => page.getByRole('region', { name: 'Lamp details' });
const figure = (term: string) =>
  panel()
    .locator('dl > div', { has: page.getByText(term, { exact: true }) })
    .locator('dd')
    .first();
const undo = () => page.getByRole('button', { name: /^Undo/ });
const basis = () => findings(page).getByText(/Read in/);

async function openFile(name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    panel().getByRole('button', { name: 'Open a lamp file' }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
}

test('says what the lamps are and do: CIE LED-B2 (CIE 15:2018: 2998 K)', async () => {
  await expect(lampName()).toHaveText('3000 K, Ra 80');
  await expect(panel()).toHaveCount(0);
  await opener().click();
  await expect(panel()).toContainText('Strong reds: somewhat dull.');
  await panel().getByRole('button', { name: 'Figures' }).click();
  await expect(figure('Color temperature')).toHaveText('2998 K');
});

test('a better class of lamp changes picture and findings, and is one step to undo', async () => {
  await refined(page);
  const before = await stillShot(page);
  await choose(page, 'Best (Ra 97)');
  await expect(lampName()).toHaveText('3000 K, Ra 97');
  await expect(figure('Ra')).toHaveText('97');
  await settled(page);
  await refined(page);
  // The model of a lamp meets its color temperature.
  await expect(basis()).toHaveText(/evening light, about 3000 K/);
  const after = await stillShot(page);
  expect(after.bytes.equals(before.bytes)).toBe(false);

  // The class goes along when the color changes.
  await page.getByRole('slider', { name: 'Lamp color' }).fill('0');
  await expect(lampName()).toHaveText('2700 K, Ra 97');
  await settled(page);
  await expect(basis()).toHaveText(/evening light, about 2700 K/);
  await undo().click();
  await undo().click();
  await expect(lampName()).toHaveText('3000 K, Ra 80');
  await settled(page);
  expect((await stillShot(page)).bytes.equals(before.bytes)).toBe(true);
});

test('a lamp chosen by day, where the lamps are off, is there in the evening too', async () => {
  await choose(page, 'Day, overcast');
  await expect(panel()).toContainText(
    'The lamps are off in this setting. Turn on Ceiling or go to Evening to see them.',
  );
  await choose(page, 'Good (Ra 90)');
  await choose(page, 'Evening');
  await expect(panel()).not.toContainText('off in this setting');
  await expect(lampName()).toHaveText('3000 K, Ra 90');
  await undo().click();
  await expect(lampName()).toHaveText('3000 K, Ra 80');
  await settled(page);
});

test('another kind of lamp has no class; the slider leads back to LED lamps', async () => {
  const kind = panel().getByRole('combobox', { name: 'Kind' });
  await kind.selectOption('Fluorescent tube (4000 K)');
  await settled(page);
  // CIE 15:2018: FL11 has 4000 K, Ra 83.
  await expect(basis()).toHaveText(/evening light, about 4000 K/);
  await expect(figure('Ra')).toHaveText('83');
  await expect(panel().getByRole('radiogroup')).toHaveCount(0);
  const slider = page.getByRole('slider', { name: 'Lamp color' });
  await expect(slider).toHaveValue('2');
  await slider.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(lampName()).toHaveText('3000 K, Ra 80');
  await expect(kind).toHaveValue('led:');
  await undo().click();
  await undo().click();
  await settled(page);
});

/** Invented: a red and a green band, so that the light is warm white and its colors are odd. */
const BANDS = ['nm;strip;spot']
  .concat(
    Array.from({ length: 81 }, (_, i) => {
      const nm = 380 + 5 * i;
      const band = (center: number, width: number) => Math.exp(-(((nm - center) / width) ** 2));
      const [red, green, blue] = [band(610, 20), band(545, 20), band(450, 15)];
      return [nm, red + 0.8 * green + 0.3 * blue, red + green + blue]
        .map((value) => String(Number(value.toFixed(4))).replace('.', ','))
        .join(';');
    }),
  )
  .join('\r\n');

test('a lamp file is read, its first lamp lit, the others kept to choose; one step undoes it', async () => {
  await openFile('two lamps.csv', BANDS);
  await expect(page.getByRole('status').filter({ hasText: 'The file has 2 lamps' })).toBeVisible();
  await expect(lampName()).toHaveText('two lamps: strip');
  await expect(panel()).toContainText('Read from two lamps.csv.');
  await settled(page);
  const read = Number.parseFloat((await figure('Color temperature').textContent()) ?? '');
  expect(read).toBeGreaterThan(0);
  await expect(basis()).toContainText(`evening light, about ${100 * Math.round(read / 100)} K`);
  await panel().getByRole('combobox', { name: 'Kind' }).selectOption('two lamps: spot');
  await expect(lampName()).toHaveText('two lamps: spot');
  await expect(undo()).toHaveAccessibleName('Undo: lamps: two lamps: spot');
  await undo().click();
  await undo().click();
  await expect(lampName()).toHaveText('3000 K, Ra 80');
  await expect(panel().getByRole('option', { name: 'two lamps: strip' })).toHaveCount(0);
  await settled(page);
});

test('a file that is no lamp is refused in plain words and changes nothing', async () => {
  const steps = await undo().getAttribute('aria-label');
  await openFile('notes.csv', 'nm;strip\r\n380;0,1\r\n385;much\r\n');
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('"much" is not a number.');
  await expect(alert).toContainText('notes.csv, line 3');
  await expect(alert).toContainText('Nothing was changed.');
  await expect(alert.getByRole('button', { name: 'Save my work' })).toHaveCount(0);
  await expect(lampName()).toHaveText('3000 K, Ra 80');
  expect(await undo().getAttribute('aria-label')).toBe(steps);
  await alert.getByRole('button', { name: 'Dismiss' }).click();
  await expect(alert).toHaveCount(0);
});

for (const [width, height] of [
  [1280, 800],
  [820, 1180],
  [390, 844],
] as const) {
  test(`axe finds nothing in the open lamp details at ${width} x ${height}, and nothing sticks out`, async () => {
    await page.setViewportSize({ width, height });
    await expect(panel()).toBeVisible();
    await expectNoFindings(page);
    const sideways = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(sideways).toBe(0);
    if (width > 800) {
      // Two rows of controls, whatever is open: it opens beside the picture.
      const foot = (await page.locator('.stage-foot').boundingBox())!;
      expect(foot.height).toBeLessThanOrEqual(96);
    }
  });
}

test('works by keys alone: open, choose, Esc closes and gives the focus back', async () => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.keyboard.press('Escape');
  await expect(panel()).toHaveCount(0);
  await opener().focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'Light: Evening', exact: true })).toBeFocused();
  const where = panel().getByRole('combobox', { name: 'Where' });
  for (let presses = 0; presses < 30; presses++) {
    if (await where.evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await expect(where).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(panel().getByRole('slider', { name: 'Color of these lamps' })).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(panel().getByRole('combobox', { name: 'Kind' })).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('radio', { name: 'Usual (Ra 80)' })).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await expect(lampName()).toHaveText('3000 K, Ra 90');
  await page.keyboard.press('Escape');
  await expect(panel()).toHaveCount(0);
  await expect(opener()).toBeFocused();
});
