import { expect, type Page, test } from '@playwright/test';
import { ies } from '../io/ies-text';
import { expectNoFindings } from './axe';
import { chosenOf, namesOf, openPage, refined, settled, stillShot } from './page';

test.describe.configure({ mode: 'serial' });

let page: Page;

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' }, { fine: true });
});
test.afterAll(() => page.context().close());

const opener = (name: string) => page.getByRole('button', { name, exact: true });
const daylight = () => page.getByRole('region', { name: 'Sun and windows', exact: true });
const lamps = () => page.getByRole('region', { name: 'Lamps of the room', exact: true });
const undo = () => page.getByRole('button', { name: /^Undo/ });
const pick = (panel: ReturnType<typeof daylight>, name: string) =>
  panel.locator('.choice', { has: page.getByRole('radio', { name, exact: true }) }).click();

async function openFile(name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    lamps().getByRole('button', { name: 'Open an IES file' }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
}

test('bearing and hour by keys: the words say where the sun stands, the picture follows', async () => {
  await opener('Sun and windows').click();
  await expect(daylight()).toBeFocused();
  await pick(daylight(), 'Clear');
  await daylight().getByRole('combobox', { name: 'Month' }).selectOption('March');
  await daylight().getByRole('combobox', { name: 'Day', exact: true }).selectOption('21');
  // 51.5 N, 0 E at noon of March 21: 90 - 51.5 + 0.2 degrees high, in the south (closed form, declination from memory).
  await expect(daylight()).toContainText('Sun in the south, 39 degrees high');
  await settled(page);
  await refined(page);
  const before = await stillShot(page);

  const bearing = daylight().getByRole('slider', { name: 'Bearing of the back wall' });
  await bearing.focus();
  await page.keyboard.press('Home');
  await expect(bearing).toHaveAttribute('aria-valuetext', 'Back wall faces north (0 degrees)');
  await page.keyboard.press('ArrowLeft');
  await expect(bearing).toHaveAttribute('aria-valuetext', 'Back wall faces north (359 degrees)');
  await page.keyboard.press('Home');
  for (let i = 0; i < 3; i++) await page.keyboard.press('Shift+ArrowRight');
  await expect(bearing).toHaveAttribute('aria-valuetext', 'Back wall faces north-east (45 degrees)');
  await expect(undo()).toHaveAccessibleName('Undo: place and bearing');

  const hour = daylight().getByRole('slider', { name: 'Hour' });
  await hour.focus();
  await page.keyboard.press('Home');
  await expect(daylight()).toContainText('Sun below the horizon');
  // Hour angle 43 degrees: sin h = cos 51.5 cos 43, azimuth atan2(sin 43, cos 43 sin 51.5) from south (closed form).
  await hour.fill('15');
  await expect(hour).toHaveAttribute('aria-valuetext', '3:00 pm');
  await expect(daylight()).toContainText('Sun in the south-west, 27 degrees high');
  await settled(page);
  await refined(page);
  expect((await stillShot(page)).bytes.equals(before.bytes)).toBe(false);
});

test('a window is added, shown on the plan and undone; one larger than its wall is refused at its field', async () => {
  const windows = daylight().locator('.room-list li');
  const before = await windows.count();
  await daylight().getByRole('button', { name: 'Add a window' }).click();
  await expect(windows).toHaveCount(before + 1);
  await expect(daylight().locator('.plan-window')).toHaveCount(before + 1);
  await expect(undo()).toHaveAccessibleName('Undo: windows');
  const named = (await windows.last().textContent())!;

  const width = daylight().getByRole('textbox', { name: /^Width/ });
  await width.fill('5500');
  await width.press('Enter');
  await expect(width).toHaveAttribute('aria-invalid', 'true');
  await expect(daylight().getByRole('alert')).not.toBeEmpty();
  await expect(windows.last()).toHaveText(named);
  await width.fill('wide');
  await width.press('Enter');
  await expect(daylight().getByRole('alert')).toContainText('This is no length.');
  await width.fill('800');
  await width.press('Enter');
  await expect(daylight().getByRole('alert')).toHaveCount(0);
  await expect(windows.last()).toContainText('800 ×');

  await undo().click();
  await undo().click();
  await expect(windows).toHaveCount(before);
  await page.keyboard.press('Escape');
});

test('Esc closes the panel and gives the focus back', async () => {
  if ((await daylight().count()) === 0) await opener('Sun and windows').click();
  await daylight().getByRole('slider', { name: 'Hour' }).focus();
  await page.keyboard.press('Escape');
  await expect(daylight()).toHaveCount(0);
  await expect(opener('Sun and windows')).toBeFocused();
});

test('an IES file gives lamps their beam and lumens in one step; a broken one is refused with its line', async () => {
  await opener('Lamps').click();
  await pick(lamps(), 'As a file says');
  await openFile('broken.ies', ies().replace('1000', 'many'));
  const alert = lamps().getByRole('alert');
  await expect(alert).toContainText(/Line \d+/);
  await expect(alert).toContainText('The lamps are as they were.');

  // Lambert, 1000 lm.
  await openFile('round.ies', ies());
  await expect(lamps().getByRole('status')).toContainText(/: (99\d|1,00\d) lm\./);
  await expect(undo()).toHaveAccessibleName(/^Undo: beam of /);
  await expect(lamps().getByRole('textbox', { name: /^Light of each/ })).toHaveValue(/^(99\d|100\d)$/);
  await undo().click();
  await expect(lamps().getByRole('radio', { name: 'Wide' })).toBeChecked();
  await pick(lamps(), 'At places');
  const x = lamps().getByRole('textbox', { name: /^Lamp 1, from the left wall/ });
  await x.fill('1500');
  await x.press('Enter');
  await expect(x).toHaveValue('1500');
  await page.keyboard.press('Escape');
});

test('a setting is kept under a new name, renamed and removed', async () => {
  await opener('Light').click();
  const name = page.getByRole('textbox', { name: 'Name of the setting' });
  await name.fill('Clear, evening sun');
  await opener('Keep as a copy').click();
  await expect.poll(() => chosenOf(page, 'Light setting')).toBe('Clear, evening sun');
  await expect(name).toHaveValue('Clear, evening sun');
  await name.fill('Late sun');
  await opener('Rename').click();
  await expect.poll(() => chosenOf(page, 'Light setting')).toBe('Late sun');
  await opener('Remove').click();
  await expect.poll(() => namesOf(page, 'Light setting')).not.toContain('Late sun');
  await page.keyboard.press('Escape');
  await expect(name).toHaveCount(0);
  await expect(opener('Light')).toBeFocused();
});

test('daylight goes out and comes back as it was', async () => {
  const light = page.getByRole('checkbox', { name: 'Daylight' });
  await opener('Light').click();
  await expect(light).toBeChecked();
  await light.click();
  await opener('Sun and windows').click();
  await expect(daylight()).toContainText('This setting has no daylight.');
  await opener('Light').click();
  await light.click();
  await opener('Sun and windows').click();
  await expect(daylight()).toContainText('Sun in the ');
  await page.keyboard.press('Escape');
});

test('with nothing on, the picture says so and nothing is read as installed', async () => {
  const light = page.getByRole('checkbox', { name: 'Daylight' });
  await opener('Light').click();
  await light.click();
  await opener('Light').click();
  await expect(page.locator('.stage-note').filter({ hasText: 'No light is on in this setting.' })).toBeVisible();
  const found = page.getByRole('region', { name: 'Findings', exact: true });
  await expect(found.getByRole('rowheader', { name: 'Samples' })).toBeVisible();
  await expect(found.getByRole('rowheader', { name: 'Installed' })).toHaveCount(0);
  await expect(found).not.toContainText(/Read in .* K/);
  await opener('Light').click();
  await light.click();
  await expect(page.locator('.stage-note').filter({ hasText: 'No light' })).toHaveCount(0);
  await page.keyboard.press('Escape');
});

test('the picture is busy from a choice of light on, and every dimmer is in sight', async () => {
  await refined(page);
  await opener('Light').click();
  for (const name of ['Daylight past the blind', 'Ceiling', 'Under-cabinet', 'Pendant', 'Hood']) {
    await expect(page.getByRole('slider', { name, exact: true })).toBeInViewport();
  }
  await page.keyboard.press('Escape');
  const busy = await page.evaluate(async () => {
    const radios = [...document.querySelectorAll<HTMLInputElement>('[aria-label="Light setting"] input')];
    radios.find(({ checked }) => !checked)!.click();
    await new Promise((resolve) => requestAnimationFrame(resolve));
    return document.querySelector('.stage-picture')?.getAttribute('aria-busy');
  });
  expect(busy).toBe('true');
  await refined(page);
});

for (const [width, height] of [
  [1280, 800],
  [390, 844],
  [640, 400],
] as const) {
  test(`axe finds nothing in the panels at ${width} x ${height}, and nothing sticks out`, async () => {
    await page.setViewportSize({ width, height });
    for (const name of ['View', 'Light', 'Sun and windows', 'Lamps']) {
      await opener(name).click();
      await expect(page.locator('.room-panel')).toBeVisible();
      await expectNoFindings(page);
      const sideways = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(sideways).toBe(0);
      await page.locator('.room-panel').getByRole('button', { name: 'Close' }).click();
    }
  });
}
