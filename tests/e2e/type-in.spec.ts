import { expect, type Page, test } from '@playwright/test';
import { choose, drawer, finishes, openPage, sample } from './page';

test.describe.configure({ mode: 'serial' });

let page: Page;
test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' });
});
test.afterAll(() => page.context().close());

const form = () => drawer(page).locator('form');
const value = () => form().getByRole('textbox').first();
const meaning = () => form().locator('.type-in-meaning');

test('numbers are asked for their light and observer, which a pasted line fills in', async () => {
  await sample(page, 'backsplash').click();
  await choose(page, 'Type one in');
  await expect(form().getByLabel('Light, observer')).toHaveValue('D65, 2°');
  await value().fill('84.2, 0.5, 6.1');
  await expect(meaning()).toContainText('Lab 84.2, 0.5, 6.1');

  await form().getByLabel('Light, observer').selectOption('D50, 10°');
  await expect(form().getByLabel('L*, a*, b* (D50, 10°)')).toBeVisible();
  // A yellowish white is less red under D65 than its a* under D50 says.
  await expect(meaning()).toContainText(/Lab 84\.\d, −0\.\d/);

  await value().fill('L* 84.2 a* 0.5 b* 6.1 (D65/10°) SCE, LRV 80');
  await expect(form().getByLabel('Light, observer')).toHaveValue('D65, 10°');
  await expect(form().getByLabel('Mirror reflection')).toHaveValue('excluded');
  await expect(form().getByLabel('Printed LRV')).toHaveValue('80');
  await expect(meaning()).toContainText('The printed LRV is 80');
  await expect(meaning()).toContainText('Measured without mirror reflection');
});

test('each kind shows the fields it needs, and no others', async () => {
  await choose(page, 'Munsell');
  await expect(form().getByLabel('Light, observer')).toHaveCount(0);
  await expect(form().getByLabel('Mirror reflection')).toHaveCount(0);
  await value().fill('5Y 9/1');
  await expect(meaning()).toContainText('from Munsell 5Y 9/1');
  await expect(meaning()).toContainText('The notation is rounded');
  await expect(form().getByLabel('Call it')).toHaveAttribute('placeholder', 'Munsell 5Y 9/1');
  await choose(page, 'Hex code');
  await form().getByLabel('Screen').selectOption('display-p3');
  await value().fill('#d9d4c8');
  await expect(meaning()).toContainText('(Display P3)');
  await expect(form().getByLabel('How do you know it?')).toBeDisabled();
  await choose(page, 'LRV and hue');
  await expect(form().getByLabel('Printed LRV')).toHaveCount(0);
  await value().fill('warm gray 70');
  await expect(meaning()).toContainText('so light that it reads yellowish white; usual are 4-67. Check the number.');
});

test('what every kind asks for stays in its place, below a color box as wide as the form', async () => {
  const place = async (label: string) => (await form().getByLabel(label, { exact: true }).boundingBox())!;
  const places = async () => Promise.all(['Call it', 'Material', 'Sheen', 'How do you know it?'].map(place));
  await choose(page, 'Lab numbers');
  const before = await places();
  const fields = (await form().locator('.type-in-fields').boundingBox())!;
  for (const kind of ['Munsell', 'Hex code', 'LRV and hue']) {
    await choose(page, kind);
    expect(await places()).toEqual(before);
    const box = (await value().boundingBox())!;
    expect(box.width).toBeCloseTo(fields.width, 0);
    expect(box.y).toBeLessThan(before[0]!.y);
  }
  await choose(page, 'Spectrum');
  expect(await places()).toEqual(before);
});

for (const [width, height] of [
  [1280, 800],
  [820, 1180],
  [390, 844],
] as const) {
  test(`at ${width} px with text twice as large the form keeps inside the page and cuts no menu`, async () => {
    await page.setViewportSize({ width, height });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '32px';
    });
    await choose(page, 'Lab numbers');
    await value().fill('L* 92.1 a* -0.4 b* 3.2 D65/10');
    const wide = await form().evaluate((node) => {
      const cut = [...node.querySelectorAll('select')].filter((menu) => {
        const text = document.createElement('canvas').getContext('2d')!;
        text.font = getComputedStyle(menu).font;
        // The arrow takes about 20 px, the insets 16.
        return text.measureText(menu.selectedOptions[0]!.text).width + 36 > menu.clientWidth;
      });
      return { over: node.scrollWidth - node.clientWidth, cut: cut.map((menu) => menu.value) };
    });
    expect(wide).toEqual({ over: 0, cut: [] });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '';
    });
    await page.setViewportSize({ width: 1280, height: 800 });
  });
}

test('only a spectrum counts as measured where nobody says how the color is known', async () => {
  const known = form().getByLabel('How do you know it?');
  await choose(page, 'Spectrum');
  await expect(known).toHaveValue('measured');
  for (const kind of ['Munsell', 'Lab numbers']) {
    await choose(page, kind);
    await expect(known).toHaveValue('declared');
  }
});

test('what a pasted line filled in goes with it', async () => {
  await form().getByLabel('Light, observer').selectOption('D65, 2°');
  await value().fill('L* 84.2 a* 0.5 b* 6.1 (D50/10°) SCE, LRV 80');
  await expect(form().getByLabel('Light, observer')).toHaveValue('D50, 10°');
  await value().fill('85, 0, 6');
  await expect(form().getByLabel('Light, observer')).toHaveValue('D65, 2°');
  await expect(form().getByLabel('Mirror reflection')).toHaveValue('unsaid');
  await expect(form().getByLabel('Printed LRV')).toHaveValue('');
  await form().getByLabel('Gloss at 60°, GU').fill('85');
  await expect(form().getByLabel('Sheen')).toHaveValue('gloss');
  await form().getByLabel('Sheen').selectOption('flat');
  await expect(form().getByLabel('Gloss at 60°, GU')).toHaveValue('');
  await value().fill('ΔL* 0.5 Δa* 0.1 Δb* 0.3');
  await expect(meaning()).toContainText('These are differences, not a color.');
});

test('a measured spectrum is opened and laid, and one that cannot be read is said so', async () => {
  await choose(page, 'Spectrum');
  const file = (name: string, text: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
  const input = form().locator('input[type=file]');
  await input.setInputFiles(file('broken.csv', '400,0.5\n410,black\n420,0.5'));
  await expect(meaning()).toContainText('is not a wavelength and a value');
  await expect(form().getByRole('button', { name: 'Use it' })).toBeDisabled();

  await input.setInputFiles(file('gray.csv', Array.from({ length: 31 }, (_, i) => `${400 + 10 * i},20`).join('\n')));
  await expect(form()).toContainText('gray.csv');
  // 20 % at every wavelength: L* 51.8 (CIE 15), LRV 20.
  await form().getByLabel('Printed LRV').fill('');
  await form().getByLabel('Mirror reflection').selectOption('included');
  await expect(meaning()).toContainText(/Lab 51\.8, 0\.0, 0\.0; LRV 20\.0/);
  await expect(form().getByLabel('How do you know it?')).toHaveValue('measured');
  await form().getByLabel('Call it').fill('Gray sample');
  await form().getByRole('button', { name: 'Use it' }).click();
  await expect(finishes(page).getByRole('option', { selected: true })).toContainText('Gray sample');
});
