import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import {
  canvas,
  drawer,
  openPage,
  option,
  prepare,
  reading,
  refined,
  type Shot,
  sample,
  sentence,
  settled,
  stillShot,
} from './page';

const DEMO = readFileSync('demo-data/terrace.project.json', 'utf8');

test.describe('wrong files, wrong colors, a lost picture', () => {
  test.describe.configure({ mode: 'serial' });
  let page: Page;
  let before: string;

  test.beforeAll(async ({ browser }) => {
    page = await openPage(browser, { reducedMotion: 'reduce' }, { fine: true });
    before = (await sentence(page).textContent())!;
  });
  test.afterAll(() => page.context().close());

  async function expectUnchanged(): Promise<void> {
    await settled(page);
    await expect(sentence(page)).toHaveText(before);
    await expect(option(page, 'Copied look')).toHaveCount(1);
    await expect(option(page, 'Our floor')).toBeChecked();
    await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
  }

  const broken = [
    { what: 'no JSON', name: 'cut-off.json', text: DEMO.slice(0, 4000), says: /cut-off\.json, line \d+/ },
    {
      what: 'a finish that is not there',
      name: 'missing.json',
      text: DEMO.replace('"finish": "ST-01"', '"finish": "ST-99"'),
      says: /missing\.json[\s\S]*ST-99/,
    },
    {
      what: 'a number that cannot be',
      name: 'wrong.json',
      text: DEMO.replace(/"depth": \d+/, '"depth": -3'),
      says: /wrong\.json, line \d+[\s\S]*depth is -3/,
    },
    { what: 'another kind of file', name: 'picture.json', text: '[1, 2, 3]', says: /picture\.json/ },
  ];
  for (const { what, name, text, says } of broken) {
    test(`a project file with ${what}: said where and what to do, and the last project stays`, async () => {
      expect(text === DEMO).toBe(false);
      await page
        .locator('input[type=file]')
        .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
      const banner = page.getByRole('alert');
      await expect(banner).toContainText(says);
      await expect(banner).toContainText(/^Nothing was changed\./);
      await expect(banner.getByRole('button', { name: 'Save my work' })).toHaveCount(0);
      await expectUnchanged();
      await banner.getByRole('button', { name: 'Dismiss' }).click();
      await expect(banner).toHaveCount(0);
    });
  }

  test('colors that cannot be: said, and nothing is laid', async () => {
    await sample(page, 'backsplash').click();
    await page.locator('.choice', { hasText: 'Type one in' }).click();
    const form = drawer(page).locator('form');
    const use = form.getByRole('button', { name: 'Use it' });
    const cases = [
      // No surface of that lightness reflects so strongly colored a light (MacAdam's limit).
      { kind: 'Lab numbers', value: 'lab:50,200,200', says: /.{20}/ },
      { kind: 'Lab numbers', value: '50, 1', says: /We cannot read a color in/ },
      { kind: 'Hex code', value: '#12345', says: /We cannot read a color in/ },
      { kind: 'LRV and hue', value: '62 gurkish', says: /gurkish/ },
      { kind: 'LRV and hue', value: '140 white', says: /140|100/ },
    ];
    for (const { kind, value, says } of cases) {
      await form.locator('.choice', { hasText: kind }).click();
      const field = form.getByRole('textbox').first();
      await field.fill(value);
      const meaning = form.locator('.type-in-meaning');
      await expect(meaning.locator('strong')).toHaveText(says);
      await expect(meaning.locator('p').nth(1)).not.toBeEmpty();
      await expect(field).toHaveAttribute('aria-invalid', 'true');
      await expect(use).toBeDisabled();
      await field.press('Enter');
    }
    await page.keyboard.press('Escape');
    await expectUnchanged();
  });

  test('a lost graphics context: said, and the same picture comes back', async () => {
    await refined(page);
    const picture = await stillShot(page);
    await loseAndRestore();
    expect(worstDifference(await stillShot(page), picture)).toBeLessThanOrEqual(1);
  });

  async function loseAndRestore(): Promise<void> {
    await canvas(page).evaluate((element: HTMLCanvasElement) => {
      const handle = element.getContext('webgl2')!.getExtension('WEBGL_lose_context')!;
      (window as unknown as { handle: unknown }).handle = handle;
      handle.loseContext();
    });
    const message = page.getByText(/graphics card let go/);
    await expect(message).toBeVisible();
    await expect(sentence(page)).toHaveText(before);
    await page.evaluate(() => (window as unknown as { handle: WEBGL_lose_context }).handle.restoreContext());
    await expect(message).toHaveCount(0);
  }
});

test('without WebGL 2: a flat drawing, in which axe finds nothing, and every finding', async ({ browser }) => {
  const context = await browser.newContext();
  const page = await context.newPage();
  await prepare(page);
  await page.addInitScript(() => {
    const original = HTMLCanvasElement.prototype.getContext as (this: HTMLCanvasElement, ...args: unknown[]) => unknown;
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return kind === 'webgl2' ? null : original.call(this, kind, ...rest);
    } as typeof HTMLCanvasElement.prototype.getContext;
  });
  await page.goto('./');
  await settled(page);
  await expect(page.getByText(/flat drawing of it/)).toBeVisible();
  await expect(sentence(page)).toContainText(/cool or gray/);
  const drawing = page.getByRole('img', { name: /^Flat drawing/ });
  await expect(drawing).toBeVisible();
  await expect(canvas(page)).toHaveCount(0);
  await expectNoFindings(page);
  await drawing
    .locator('rect', { has: page.locator('title', { hasText: /^Backsplash$/ }) })
    .first()
    .click({ force: true });
  await expect(reading(page)).toHaveAccessibleName('Reading: Backsplash');
  await context.close();
});

function worstDifference(a: Shot, b: Shot): number {
  if (a.bytes.length !== b.bytes.length) return 255;
  let worst = 0;
  for (let i = 0; i < a.bytes.length; i++) worst = Math.max(worst, Math.abs(a.bytes[i]! - b.bytes[i]!));
  return worst;
}
