import { expect, type Locator, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { openPage } from './page';

test.describe.configure({ mode: 'serial' });

let page: Page;

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' }, { dark: true });
});
test.afterAll(() => page.context().close());

const panel = () => page.getByRole('region', { name: 'Kitchen', exact: true });
const questions = () => page.getByRole('dialog', { name: /^New project/ });
const undo = () => page.getByRole('button', { name: /^Undo/ });
const button = (name: string, within: Locator = page.locator('body')) =>
  within.getByRole('button', { name, exact: true });
const fold = (name: string) => panel().locator('summary', { hasText: name });
const pick = (within: Locator, name: string) =>
  within.locator('label', { has: page.getByRole('radio', { name, exact: true }) }).click();

async function openPanel(): Promise<void> {
  if ((await panel().count()) === 0) await button('Kitchen').click();
  await expect(panel()).toBeVisible();
}

async function axeClean(...parts: readonly string[]): Promise<void> {
  await expectNoFindings(page, ...parts);
  const sideways = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(sideways).toBe(0);
}

test('the layout is changed by keyboard, and what is laid stays', async () => {
  await openPanel();
  const laid = await page.locator('[data-sample]').allTextContents();
  const layouts = panel().getByRole('radiogroup', { name: 'Layout' });
  await expect(layouts.getByRole('radio', { checked: true })).toHaveAccessibleName('L with island');
  await layouts.getByRole('radio', { name: 'L with island' }).focus();
  await page.keyboard.press('ArrowLeft');
  await expect(layouts.getByRole('radio', { name: 'U', exact: true })).toBeChecked();
  // Three walls have counters: a U has a run on the left, the back and the right wall (the trade's use of the letter).
  await expect(panel().locator('.plan-counter')).toHaveCount(3);
  // Pendants hang over the island there was: what is lost is said, until it is back.
  await expect(
    panel()
      .getByRole('status')
      .filter({ hasText: /Left out: .*pendants/ }),
  ).toBeVisible();
  await undo().click();
  await expect(panel().getByText(/Left out:/)).toHaveCount(0);
  await expect(layouts.getByRole('radio', { checked: true })).toHaveAccessibleName('L with island');
  expect(await page.locator('[data-sample]').allTextContents()).toEqual(laid);
});

test('a length is typed in inches, read back in mm, and a bad one is refused at its field', async () => {
  await openPanel();
  await pick(panel().getByRole('radiogroup', { name: 'Lengths in' }), 'inches');
  await fold('Cabinets and fronts').click();
  const recess = panel().getByRole('textbox', { name: /^Toe kick recess/ });
  await recess.fill('2 1/2"');
  await recess.press('Enter');
  await expect(recess).toHaveValue('2 1/2');
  await pick(panel().getByRole('radiogroup', { name: 'Lengths in' }), 'mm');
  // 2.5 in of 25.4 mm each.
  await expect(recess).toHaveValue('63.5');

  await recess.fill('wide');
  await recess.press('Enter');
  await expect(recess).toHaveAttribute('aria-invalid', 'true');
  await expect(panel().getByRole('alert')).toContainText('This is no length');
  await recess.fill('4000');
  await recess.press('Enter');
  await expect(panel().getByRole('alert')).toContainText('4000 mm is outside');
  await recess.press('Escape');
  await expect(panel()).toHaveCount(0);
  await openPanel();
  await fold('Cabinets and fronts').click();
  await expect(panel().getByRole('textbox', { name: /^Toe kick recess/ })).toHaveValue('63.5');
  await undo().click();
  await expect(panel().getByRole('textbox', { name: /^Toe kick recess/ })).not.toHaveValue('63.5');
});

test('arrow keys step a field, one step to undo for as long as the key is held', async () => {
  const height = panel()
    .getByRole('textbox', { name: /^Height, mm/ })
    .first();
  const before = Number(await height.inputValue());
  await height.focus();
  await page.keyboard.down('ArrowUp');
  await page.keyboard.down('ArrowUp');
  await page.keyboard.up('ArrowUp');
  await expect(height).toHaveValue(String(Math.floor(before / 10) * 10 + 20));
  await undo().click();
  await expect(height).toHaveValue(String(before));
});

test('the sink is moved by arrow keys on the plan, stops where it does not fit and says why', async () => {
  const sink = panel().getByRole('slider', { name: 'Sink', exact: true });
  await sink.focus();
  const at = async () => Number(await sink.getAttribute('aria-valuenow'));
  const before = await at();
  await page.keyboard.press('ArrowDown');
  expect(await at()).toBe(Math.round(before / 10) * 10 - 10);
  await page.keyboard.press('Shift+ArrowUp');
  expect(await at()).toBe(Math.round(before / 10) * 10 + 90);
  await expect(sink).toHaveAttribute('aria-valuetext', `${await at()} mm from the door wall`);
  for (let i = 0; i < 60; i++) await page.keyboard.press('Shift+ArrowUp');
  await expect(panel().getByRole('status').filter({ hasText: 'It stops there.' })).toBeVisible();
  const length = Number(await sink.getAttribute('aria-valuemax'));
  expect(await at()).toBeLessThan(length);
  await page.keyboard.press('Enter');
  await expect(
    panel()
      .getByRole('textbox', { name: /^Middle, from the door wall/ })
      .first(),
  ).toBeFocused();
});

test('a clearance is a sentence with its source one step away, and is drawn on the plan', async () => {
  const hint = panel().locator('.clearance').first();
  await hint.getByRole('button').first().focus();
  await expect(panel().locator('.plan-clearance')).toBeVisible();
  await expect(hint).toContainText(/\d+ mm/);
  await expect(panel()).toContainText('local codes decide');

  // What was measured before the sink moved is not drawn over the kitchen of after.
  const sink = panel().getByRole('slider', { name: 'Sink', exact: true });
  await sink.focus();
  await hint.hover();
  await expect(panel().locator('.plan-clearance')).toBeVisible();
  // None is drawn, or one of the kitchen of after where the list has moved under the mouse.
  const drawn = () =>
    panel()
      .locator('.plan-clearance')
      .evaluateAll((found) => found.map((one) => one.innerHTML).join());
  const before = await drawn();
  await page.keyboard.press('ArrowDown');
  await expect.poll(drawn).not.toBe(before);
  await undo().click();
});

test('elevations show each wall to scale', async () => {
  for (const name of ['Left', 'Back', 'Right', 'Door']) {
    await pick(panel().getByRole('radiogroup', { name: 'Drawing' }), name);
    await expect(panel().getByRole('group', { name: /seen from within/ })).toBeVisible();
    await expect(panel().locator('.plan-length').first()).toBeVisible();
  }
  await pick(panel().getByRole('radiogroup', { name: 'Drawing' }), 'Plan');
});

for (const [width, height] of [
  [1280, 800],
  [390, 844],
  [640, 400],
] as const) {
  test(`axe finds nothing in the panel and the questions at ${width} x ${height}, and nothing sticks out`, async () => {
    await page.setViewportSize({ width, height });
    await openPanel();
    for (const name of ['Runs along the walls', 'Island or peninsula', 'Sink, cooktop, appliances']) {
      await fold(name).click();
    }
    await axeClean();
    await button('Close', panel()).click();
    await button('More').click();
    await button('New project').click();
    await expect(questions()).toBeVisible();
    for (let i = 1; i <= 5; i++) {
      await expect(questions()).toContainText(`${i} of 5`);
      // What lies behind the questions stays the same from one to the next.
      await axeClean(...(i === 1 ? [] : ['dialog']));
      if (i < 5) await button('Skip', questions()).click();
    }
    await page.keyboard.press('Escape');
    await expect(questions()).toHaveCount(0);
  });
}

test('Esc in the questions keeps the present project', async () => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const name = await page.locator('.bar-project').textContent();
  await button('More').click();
  await button('New project').click();
  await questions().getByRole('checkbox', { name: 'Floor', exact: true }).check();
  await button('Next', questions()).click();
  await expect(questions()).toContainText('2 of 5');
  await expect(questions().getByRole('heading').first()).toBeVisible();
  // What was answered is not dropped without a word.
  await page.keyboard.press('Escape');
  await expect(questions()).toContainText('Your answers are dropped.');
  await expect(button('Keep answering', questions())).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(questions()).not.toContainText('Your answers are dropped.');
  await page.keyboard.press('Escape');
  await button('Leave', questions()).click();
  await expect(questions()).toHaveCount(0);
  await expect(page.locator('.bar-project')).toHaveText(name!);
});

test('five answers make a project; the one before stays and is gone back to', async () => {
  const name = await page.locator('.bar-project').textContent();
  await button('More').click();
  await button('New project').click();
  await questions().getByRole('checkbox', { name: 'Floor', exact: true }).check();
  await questions().getByRole('combobox', { name: 'Floor: finish' }).selectOption({ index: 1 });
  await button('Next', questions()).click();
  await pick(questions(), 'Galley');
  const width = questions().getByRole('textbox', { name: /^Width/ });
  await width.fill('9 ft 10 in');
  await button('Next', questions()).click();
  await pick(questions(), 'South-west');
  await button('Back', questions()).click();
  // 9 ft 10 in = 118 in = 2997.2 mm.
  await expect(width).toHaveValue('2997.2');
  await button('Next', questions()).click();
  await expect(questions().getByRole('radio', { name: 'South-west' })).toBeChecked();
  await button('Next', questions()).click();
  await pick(questions(), 'Warm, yellowish');
  await questions().getByRole('checkbox', { name: 'Downlights' }).check();
  await button('Next', questions()).click();
  await questions().getByRole('checkbox', { name: 'Somebody with low vision' }).check();
  await button('Make the project', questions()).click();
  await expect(questions()).toHaveCount(0);
  await openPanel();
  await expect(panel().getByRole('radio', { name: 'Galley' })).toBeChecked();
  await expect(
    panel()
      .getByRole('textbox', { name: /^Width, mm/ })
      .first(),
  ).toHaveValue('2997.2');
  await expect(undo()).toBeDisabled();
  await button(`Back to “${name}”`).click();
  await expect(page.locator('.bar-project')).toHaveText(name!);
});

test('skipping all five makes a project, too', async () => {
  await button('Close', panel()).click();
  await button('More').click();
  await button('New project').click();
  for (let i = 0; i < 5; i++) await button('Skip', questions()).click();
  await expect(questions()).toHaveCount(0);
  await expect(page.locator('.bar-project')).toHaveText('New kitchen');
  await expect(undo()).toBeDisabled();
});
